import type { UnitSystem } from './quantity.js'
import { unitKey } from './unit-key.js'

/** One unit of one quantity: an amount reads `(number - zero) * factor` in the unit it is held in. */
export interface Unit {
  readonly name: string
  readonly factor: number
  readonly zero: number
  readonly caseMatters: boolean
  readonly keys: readonly string[]
}

/** From the magnitude `from` upward, print in this unit with at most so many decimals. */
export interface PrintStep {
  readonly from: number
  readonly unit: Unit
  readonly decimals: number
}

/** Steps upward from nothing. */
export type PrintSteps = readonly [PrintStep, ...PrintStep[]]

/** What there is to know about a quantity that is written as a number and a unit. */
export interface MeasuredQuantity {
  readonly spoken: string
  readonly units: readonly Unit[]
  readonly suggested: Unit
  readonly least: number
  readonly leastBecause: string
  readonly fractions: boolean
  readonly readsBareNumber: boolean
  readonly refused: Readonly<Record<string, string>>
  readonly printed: Readonly<Record<UnitSystem, PrintSteps>>
}

interface MeasuredQuantityGiven {
  readonly spoken: string
  readonly units: readonly Unit[]
  readonly suggested: Unit
  readonly least?: number
  readonly leastBecause?: string
  readonly fractions?: boolean
  readonly readsBareNumber?: boolean
  readonly refused?: Readonly<Record<string, string>>
  readonly printed: Readonly<Record<UnitSystem, PrintSteps>>
}

/** Completes and freezes a quantity's table; without `least` an amount may be anything. */
export function measuredQuantity(given: MeasuredQuantityGiven): MeasuredQuantity {
  return Object.freeze({
    ...given,
    units: Object.freeze([...given.units]),
    least: given.least ?? -Infinity,
    leastBecause: given.leastBecause ?? `${given.spoken} is never negative`,
    fractions: given.fractions ?? false,
    readsBareNumber: given.readsBareNumber ?? false,
    refused: Object.freeze({ ...given.refused }),
    printed: Object.freeze({ ip: frozenSteps(given.printed.ip), si: frozenSteps(given.printed.si) }),
  })
}

/** A unit whose spellings are read in capitals and small letters alike. */
export function unit(name: string, factor: number, spellings: readonly string[] = [], zero = 0): Unit {
  return Object.freeze({ name, factor, zero, caseMatters: false, keys: keysOf(name, spellings) })
}

/** A unit whose prefix would mean something else in the other case: mPa is not MPa. */
export function caseSensitiveUnit(name: string, factor: number, spellings: readonly string[] = []): Unit {
  return Object.freeze({ name, factor, zero: 0, caseMatters: true, keys: keysOf(name, spellings) })
}

/** One step of a print table. */
export function printedIn(step: Unit, decimals: number, from = 0): PrintStep {
  return Object.freeze({ unit: step, decimals, from })
}

function frozenSteps([first, ...later]: PrintSteps): PrintSteps {
  return Object.freeze<PrintSteps>([first, ...later])
}

function keysOf(name: string, spellings: readonly string[]): readonly string[] {
  return Object.freeze([...new Set([name, ...spellings].map(unitKey))])
}
