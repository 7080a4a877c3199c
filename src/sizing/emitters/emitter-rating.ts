import { emitterExponent } from '../../tables/index.js'
import { si } from '../../units/index.js'

/** What an emitter gives at its rating, and how its output follows the water: output ~ excess ** exponent. */
export interface EmitterRating {
  /** W */
  readonly output: number
  /** K by which the mean of the water lies above the air at the rating. */
  readonly excess: number
  /** 1.0 for fans, 1.24 to 1.5 for the others. */
  readonly exponent: number
}

interface PrintedRating {
  /** W */
  readonly output: number
  /** K, mean of the water; for a fan coil the water that enters. */
  readonly water: number
  /** K, air that enters: the room for radiators. */
  readonly air: number
  readonly exponent: number
}

/**
 * A rating as the maker prints it.
 *
 * @example
 * // 19 ft of fin-tube, 580 Btu/h a foot with water at 180 F and air at 65 F
 * emitterRating({ output: 3229.6, water: 355.37, air: 291.48, exponent: emitterExponent('fin-tube') }).excess // 63.89
 */
export function emitterRating({ output, water, air, exponent }: PrintedRating): EmitterRating {
  return { output, excess: water - air, exponent }
}

/**
 * A cast-iron radiator by its radiating surface: 150 Btu/h for a square foot EDR with water at 170 F in a room at 70 F.
 *
 * That is the definition for hot water. The one for steam, 240 Btu/h at 215 F, promises 1.3 % less at the same water.
 *
 * @param edr m2 of EDR
 * @example
 * castIronRadiator(5.017).output // 2374 W, or 8,100 Btu/h for 54 ft2
 */
export function castIronRadiator(edr: number): EmitterRating {
  return { output: edr * perEdr, excess: hundred, exponent: emitterExponent('cast-iron-radiator') }
}

/**
 * A cast-iron baseboard by its length: 800 Btu/h for a foot with water at 215 F and air at 65 F, as trade tables print it,
 * an addition of 15 % for heating effect included.
 *
 * @param length m
 * @example
 * castIronBaseboard(3.048).output // 2345 W, or 8,000 Btu/h for 10 ft
 */
export function castIronBaseboard(length: number): EmitterRating {
  return { output: length * perLength, excess: oneFifty, exponent: emitterExponent('cast-iron-baseboard') }
}

/**
 * A panel radiator by its output with water at 75 C and 65 C in a room at 20 C, as EN 442 rates it, for logarithmic means.
 *
 * @example
 * panelRadiator({ output: 1500, exponent: 1.3 }).excess // 49.833
 */
export function panelRadiator({ output, exponent }: Pick<EmitterRating, 'output' | 'exponent'>): EmitterRating {
  return { output, excess: 10 / Math.log(55 / 45), exponent }
}

/**
 * A rating without the 15 % for heating effect that baseboard ratings in the United States include: not heat that the water
 * gives, and missed at low temperatures.
 *
 * @example
 * withoutHeatingEffect(castIronBaseboard(3.048)).output // 2039
 */
export function withoutHeatingEffect(rating: EmitterRating): EmitterRating {
  return { ...rating, output: rating.output / 1.15 }
}

/** W for a m2 of EDR. */
const perEdr = si('heatRate', '150 Btu/h') / si('area', '1 ft2')
/** W for a m. */
const perLength = si('heatRate', '800 Btu/h') / si('length', '1 ft')
const hundred = si('temperatureDifference', '100 F')
const oneFifty = si('temperatureDifference', '150 F')
