import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface AcidWater {
  /** m3 of condensate. */
  readonly volume: number
  /** 3 to 5 for the condensate of gas. */
  readonly pH: number
}

interface Charge {
  /** m3 of condensate in a year. */
  readonly yearlyVolume: number
  /** kg of calcite that a cubic meter uses; to plan with 0.1 to 0.3, carbonic acid included. */
  readonly calcitePerVolume: number
  /** Calcite filled in over calcite used in a year; common practice 3 to 5, for only the surface works. */
  readonly reserve: number
}

interface Filled {
  /** kg */
  readonly charge: number
  /** Part of the charge that is used before the rest no longer works. */
  readonly usable: number
  /** m3 of condensate in a year. */
  readonly yearlyVolume: number
  /** kg of calcite that a cubic meter uses. */
  readonly calcitePerVolume: number
}

/**
 * Calcite that the strong acids in condensate use up, by chemistry alone; carbonic acid uses up to 0.3 kg/m3 more.
 *
 * @returns kg
 *
 * @example
 * calciteForAcid({ volume: 1, pH: 3 }) // value 0.05
 */
export function calciteForAcid({ volume, pH }: AcidWater): Sizing {
  const why = firstImpossible(['volume of condensate', volume, 'zero or more'], ['pH', pH, 'any'])
  if (why !== undefined) return cannotSize(why)
  if (pH < 0 || pH > 14) return cannotSize(`A pH of ${pH} does not exist in water: it lies between 0 and 14.`)
  const acid = volume * 1000 * 10 ** -pH
  const value = (acid / 2) * molarMassOfCalcite
  return sized({
    value,
    working: [
      { name: 'pH', value: pH, unit: '1' },
      { name: 'acid', value: acid, unit: 'mol' },
      { name: 'calcite, one for two of acid', value: acid / 2, unit: 'mol' },
      { name: 'calcite used', value, unit: 'kg' },
    ],
    assumed: ['strong acid only'],
    valid: pH <= 7,
  })
}

/**
 * Calcite to fill into a neutralizer so that it lasts a year.
 *
 * @returns kg
 *
 * @example
 * neutralizerCharge({ yearlyVolume: 3.25, calcitePerVolume: 0.2, reserve: 4 }) // value 2.6
 */
export function neutralizerCharge({ yearlyVolume, calcitePerVolume, reserve }: Charge): Sizing {
  const why = firstImpossible(
    ['condensate of a year', yearlyVolume, 'zero or more'],
    ['calcite that a cubic meter uses', calcitePerVolume, 'zero or more'],
    ['reserve', reserve, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const used = yearlyVolume * calcitePerVolume
  return sized({
    value: used * reserve,
    working: [
      { name: 'condensate of a year', value: yearlyVolume, unit: 'm3' },
      { name: 'calcite used in a year', value: used, unit: 'kg' },
      { name: 'reserve', value: reserve, unit: '1' },
      { name: 'charge', value: used * reserve, unit: 'kg' },
    ],
    assumed: [],
    valid: reserve >= 1,
  })
}

/**
 * Years that a charge lasts.
 *
 * @returns years
 *
 * @example
 * neutralizerYears({ charge: 2.6, usable: 0.25, yearlyVolume: 3.25, calcitePerVolume: 0.2 }) // value 1
 */
export function neutralizerYears({ charge, usable, yearlyVolume, calcitePerVolume }: Filled): Sizing {
  const why = firstImpossible(
    ['charge', charge, 'zero or more'],
    ['usable part of the charge', usable, 'a share'],
    ['calcite used in a year', yearlyVolume * calcitePerVolume, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = (charge * usable) / (yearlyVolume * calcitePerVolume)
  return sized({
    value,
    working: [
      { name: 'calcite that works', value: charge * usable, unit: 'kg' },
      { name: 'calcite used in a year', value: yearlyVolume * calcitePerVolume, unit: 'kg' },
      { name: 'years', value, unit: '1' },
    ],
    assumed: [],
    valid: true,
  })
}

/** kg/mol, CaCO3. */
const molarMassOfCalcite = 0.1000869
