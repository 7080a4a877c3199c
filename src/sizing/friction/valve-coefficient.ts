import { si } from '../../units/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/**
 * Metric flow coefficient Kv, m3/h at 1 bar, of an American Cv, gpm at 1 psi.
 *
 * @example
 * kvFromCv(7.5) // value 6.487
 */
export function kvFromCv(cv: number): Sizing {
  const why = firstImpossible(['flow coefficient Cv', cv, 'above zero'])
  return why === undefined ? converted('Cv', cv, 'Kv', cv / cvOfKv) : cannotSize(why)
}

/**
 * American flow coefficient Cv, gpm at 1 psi, of a metric Kv, m3/h at 1 bar.
 *
 * @example
 * cvFromKv(2) // value 2.3122
 */
export function cvFromKv(kv: number): Sizing {
  const why = firstImpossible(['flow coefficient Kv', kv, 'above zero'])
  return why === undefined ? converted('Kv', kv, 'Cv', kv * cvOfKv) : cannotSize(why)
}

interface RatedBore {
  /** m3/h of water at 1 bar. */
  readonly kv: number
  /** m, to which the coefficient shall belong. */
  readonly insideDiameter: number
}

/**
 * Resistance coefficient K that a flow coefficient means in pipe of a bore.
 *
 * With the constant of the control valve standards, 1.6e9, which is water of 999 kg/m3.
 *
 * @returns 1
 *
 * @example
 * resistanceOfKv({ kv: 500, insideDiameter: 0.154 }) // value 3.6
 */
export function resistanceOfKv({ kv, insideDiameter }: RatedBore): Sizing {
  const why = firstImpossible(
    ['flow coefficient Kv', kv, 'above zero'],
    ['inside diameter of the pipe', insideDiameter, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  return converted('Kv', kv, 'K', (valveConstant * insideDiameter ** 4) / kv ** 2)
}

function converted(fromName: string, from: number, toName: string, value: number): Sizing {
  return sized({
    value,
    working: [
      { name: `coefficient ${fromName}`, value: from, unit: unitOf(fromName) },
      { name: `coefficient ${toName}`, value, unit: unitOf(toName) },
    ],
    assumed: [],
    valid: true,
  })
}

function unitOf(name: string): string {
  if (name === 'Kv') return 'm3/h at 1 bar'
  return name === 'Cv' ? 'gpm at 1 psi' : '1'
}

const valveConstant = 1.6e9

/** A cubic meter an hour in gpm, and how much less it is at 1 psi than at 1 bar. */
const cvOfKv = (1 / 3600 / si('volumeFlow', '1 gpm')) * Math.sqrt(si('pressure', '1 psi') / si('pressure', '1 bar'))
