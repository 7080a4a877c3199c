import { firstImpossible } from '../first-impossible.js'
import { fallingRoot } from '../falling-root.js'
import type { Glycol } from '../glycol.js'
import { glycolMassFraction } from '../glycol-mass-fraction.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/**
 * Strength by volume of a mixture whose strength is told by mass, as tables and chemists tell it: the inverse of
 * {@link glycolMassFraction}.
 *
 * @param massFraction 0 to 1
 * @returns 0 to 1
 *
 * @example
 * glycolVolumeFraction('propylene-glycol', 0.3) // value 0.294
 */
export function glycolVolumeFraction(glycol: Glycol, massFraction: number): Sizing {
  const why = firstImpossible(['part of glycol by mass', massFraction, 'a share'])
  if (why !== undefined) return cannotSize(why)
  const value = fallingRoot((volume) => massFraction - glycolMassFraction(glycol, volume).value, 0, 1)
  return sized({
    value,
    working: [
      { name: 'mass fraction of glycol', value: massFraction, unit: '1' },
      { name: 'volume fraction of glycol', value, unit: '1' },
    ],
    assumed: [],
    valid: massFraction <= 0.6,
  })
}
