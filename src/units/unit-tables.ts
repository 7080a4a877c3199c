import { energyUnits } from './energy-units.js'
import { flowAndTimeUnits } from './flow-and-time-units.js'
import { hydraulicUnits } from './hydraulic-units.js'
import type { MeasuredQuantity, Unit } from './measured-quantity.js'
import { otherUnits } from './other-units.js'
import { pressureUnits } from './pressure-units.js'
import { type QuantityName, quantityNames } from './quantity.js'
import { sizeUnits } from './size-units.js'
import { temperatureUnits } from './temperature-units.js'
import { thermalUnits } from './thermal-units.js'
import { unitKey } from './unit-key.js'

/** The quantities written as a number and a unit; dates, counts and plain numbers are written otherwise. */
export type MeasuredName = Exclude<QuantityName, 'date' | 'count' | 'number'>

export const measuredQuantities: Readonly<Record<MeasuredName, MeasuredQuantity>> = Object.freeze({
  ...sizeUnits,
  ...temperatureUnits,
  ...pressureUnits,
  ...energyUnits,
  ...flowAndTimeUnits,
  ...otherUnits,
  ...hydraulicUnits,
  ...thermalUnits,
})

type UnitsByKey = Readonly<Record<string, Unit>>
interface Lookup {
  readonly exact: UnitsByKey
  readonly anyCase: UnitsByKey
}

const measuredNames: readonly MeasuredName[] = Object.freeze(quantityNames.filter(isMeasured))
const lookups: ReadonlyMap<MeasuredName, Lookup> = new Map(measuredNames.map((name) => [name, lookupOf(name)]))

/** The unit a text means when this quantity is expected. */
export function findUnit(unitText: string, quantity: MeasuredName): Unit | undefined {
  const lookup = lookups.get(quantity)
  const key = unitKey(unitText)
  if (lookup === undefined) return undefined
  if (Object.hasOwn(lookup.exact, key)) return lookup.exact[key]
  const smallLetters = key.toLowerCase()
  return Object.hasOwn(lookup.anyCase, smallLetters) ? lookup.anyCase[smallLetters] : undefined
}

/** The first quantity that has this unit. */
export function quantityOfUnit(unitText: string): MeasuredName | undefined {
  return measuredNames.find((name) => findUnit(unitText, name) !== undefined)
}

function isMeasured(name: QuantityName): name is MeasuredName {
  return name !== 'date' && name !== 'count' && name !== 'number'
}

function lookupOf(name: MeasuredName): Lookup {
  const { units } = measuredQuantities[name]
  const anyCase = units.filter(({ caseMatters }) => !caseMatters)
  return Object.freeze({ exact: byKey(units, (key) => key), anyCase: byKey(anyCase, (key) => key.toLowerCase()) })
}

function byKey(units: readonly Unit[], write: (key: string) => string): UnitsByKey {
  return Object.freeze(Object.fromEntries(units.flatMap((unit) => unit.keys.map((key) => [write(key), unit]))))
}
