import { si } from '../../units/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/**
 * Highest pressure that a boiler may reach while its relief valves blow: a fifth above its maximum allowable working pressure
 * up to 30 psi, a tenth above it beyond.
 *
 * 12 NYCRR 4-5.3, read. Other texts allow a tenth throughout.
 *
 * @param mawp Pa, gauge
 * @returns Pa, gauge
 *
 * @example
 * mostWhileRelieving(206843) // value 248211, or 36 psi for 30 psi
 */
export function mostWhileRelieving(mawp: number): Sizing {
  const why = impossibleMawp(mawp)
  if (why !== undefined) return cannotSize(why)
  const share = mawp <= small * (1 + 1e-9) ? 0.2 : 0.1
  return above(mawp, share * mawp, 'highest pressure while relieving')
}

/**
 * Highest setting of a second relief valve on a boiler; the first is set no higher than the maximum allowable working
 * pressure.
 *
 * COMAR 09.12.01.13 and NAC 455C.232, read: 6 psi above it up to 60 psi, a tenth above it beyond.
 *
 * @param mawp Pa, gauge
 * @returns Pa, gauge
 *
 * @example
 * mostSecondSetting(344738) // value 386106, or 56 psi for 50 psi
 */
export function mostSecondSetting(mawp: number): Sizing {
  const why = impossibleMawp(mawp)
  if (why !== undefined) return cannotSize(why)
  const more = mawp <= middling * (1 + 1e-9) ? si('pressure', '6 psi') : 0.1 * mawp
  return above(mawp, more, 'highest setting of a second valve')
}

const small = si('pressure', '30 psi')
const middling = si('pressure', '60 psi')

function impossibleMawp(mawp: number): string | undefined {
  return firstImpossible(['maximum allowable working pressure', mawp, 'above zero'])
}

function above(mawp: number, more: number, name: string): Sizing {
  return sized({
    value: mawp + more,
    working: [
      { name: 'maximum allowable working pressure', value: mawp, unit: 'Pa' },
      { name: 'allowed above it', value: more, unit: 'Pa' },
      { name, value: mawp + more, unit: 'Pa' },
    ],
    assumed: [],
    valid: true,
  })
}
