import { firstImpossible } from '../first-impossible.js'
import { cannotSize, type Sizing } from '../sizing.js'
import type { TankPressures } from './tank-pressures.js'
import { diaphragmTank } from './tank-volume.js'

interface UncertainSystem extends TankPressures {
  /** m3, as likely as not. */
  readonly systemVolume: number
  /** How far the content may be off to either side; 0.15 is common practice. */
  readonly spread: number
  /** Share of its cold volume by which the fluid swells. */
  readonly swelling: number
}

/** Tanks for a content that is known to within a spread. */
export interface TankSpread {
  readonly low: Sizing
  readonly likely: Sizing
  readonly high: Sizing
}

/**
 * Diaphragm tank for a system whose content is known only to within a spread: a tank at or above `high` is enough either way.
 *
 * @returns m3 each
 *
 * @example
 * tankSpread({ systemVolume: 0.3187, spread: 0.15, swelling: 0.02655, ...pressures }).high // 0.0369, or 9.7 gal
 */
export function tankSpread({ systemVolume, spread, swelling, ...pressures }: UncertainSystem): TankSpread {
  const why = firstImpossible(
    ['content of the system', systemVolume, 'zero or more'],
    ['spread of the content', spread, 'a share'],
    ['swelling of the fluid', swelling, 'zero or more'],
  )
  const at = (share: number): Sizing =>
    why === undefined ? diaphragmTank({ expansion: systemVolume * share * swelling, ...pressures }) : cannotSize(why)
  return { low: at(1 - spread), likely: at(1), high: at(1 + spread) }
}
