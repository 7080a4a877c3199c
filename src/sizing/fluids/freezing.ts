import { fallingRoot } from '../falling-root.js'
import { firstImpossible } from '../first-impossible.js'
import type { Glycol } from '../glycol.js'
import { glycolMassFraction } from '../glycol-mass-fraction.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import type { GlycolInWater } from './heating-fluid.js'
import { melinderFreezing } from './melinder.js'

/**
 * Temperature at which the first ice forms in glycol and water. It bursts no pipe yet, but it is what the strength is judged by.
 *
 * Melinder 2010, to 60 % by mass; inhibited glycols of handbook tables differ by up to 1.5 K.
 *
 * @returns K
 *
 * @example
 * freezingTemperature({ glycol: 'propylene-glycol', volumeFraction: 0.35 }) // value 256.45, or 1.9 F
 */
export function freezingTemperature({ glycol, volumeFraction }: GlycolInWater): Sizing {
  const why = firstImpossible(['part of glycol by volume', volumeFraction, 'a share'])
  if (why !== undefined) return cannotSize(why)
  const mass = glycolMassFraction(glycol, volumeFraction)
  if (!mass.valid) return cannotSize(tooStrong)
  const value = freezingAt(glycol, mass.value)
  return sized({
    value,
    working: [...mass.working, { name: 'first ice', value, unit: 'K' }],
    assumed: ['glycol without inhibitors'],
    valid: true,
  })
}

/**
 * Weakest mixture, by volume, in which no ice forms down to a temperature: the break-even of {@link freezingTemperature}.
 *
 * @param coldest K
 * @returns 0 to 1
 *
 * @example
 * strengthAgainstFreezing('propylene-glycol', 258.15) // value 0.327, for 5 F
 */
export function strengthAgainstFreezing(glycol: Glycol, coldest: number): Sizing {
  const why = firstImpossible(['coldest temperature', coldest, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  if (freezingAt(glycol, strongest) > coldest)
    return cannotSize(`No mixture of ${glycol} up to 60 % by mass keeps from freezing at ${coldest} K.`)
  const value = fallingRoot(
    (volume) => freezingAt(glycol, Math.min(strongest, glycolMassFraction(glycol, volume).value)) - coldest,
    0,
    1,
  )
  return sized({
    value,
    working: [
      { name: 'coldest temperature', value: coldest, unit: 'K' },
      { name: 'mass fraction of glycol', value: glycolMassFraction(glycol, value).value, unit: '1' },
      { name: 'volume fraction of glycol', value, unit: '1' },
    ],
    assumed: ['glycol without inhibitors'],
    valid: true,
  })
}

/** The polynomial starts a little off pure water's freezing point. */
function freezingAt(glycol: Glycol, massFraction: number): number {
  return Math.min(273.15, melinderFreezing(glycol, massFraction))
}

const strongest = 0.6
const tooStrong = 'The freezing of more than 60 % of glycol by mass is not published.'
