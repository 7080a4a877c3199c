import type { MeasuredQuantity, Unit } from './measured-quantity.js'
import { nearestName } from './nearest-name.js'
import { type NumberText, readNumber } from './number-text.js'
import { amount, type ParsedQuantity, refusal } from './parsed-quantity.js'
import { unitKey } from './unit-key.js'
import { findUnit, type MeasuredName, measuredQuantities, quantityOfUnit } from './unit-tables.js'

type NumberRead = Extract<NumberText, { ok: true }>

/** Reads a number and its unit. */
export function parseMeasured(text: string, name: MeasuredName): ParsedQuantity {
  const quantity = measuredQuantities[name]
  const number = readNumber(text)
  if (!number.ok) return refusal(`"${text}" ${number.problem}; ${unitsOf(quantity)}`)
  if (number.isFraction && !quantity.fractions)
    return refusal(`"${text}" has one number over another; ${unitsOf(quantity)}, in decimals`)
  if (number.rest !== '') return parseWithUnit(text, number, name)
  if (quantity.readsBareNumber) return amount(text, number.value, quantity.suggested, quantity)
  return refusal(`"${text}" has no unit; ${unitsOf(quantity)}`, withSuggestedUnit(number, name))
}

function parseWithUnit(text: string, number: NumberRead, name: MeasuredName): ParsedQuantity {
  const quantity = measuredQuantities[name]
  const unit = findUnit(number.rest, name)
  if (unit !== undefined) return amount(text, number.value, unit, quantity)
  return unreadableUnit(text, number, name)
}

function unreadableUnit(text: string, number: NumberRead, name: MeasuredName): ParsedQuantity {
  const quantity = measuredQuantities[name]
  const key = unitKey(number.rest).toLowerCase()
  const reason = Object.hasOwn(quantity.refused, key) ? quantity.refused[key] : undefined
  if (reason !== undefined) return refusal(`"${text}": ${reason}`)
  const other = quantityOfUnit(number.rest)
  if (other !== undefined) return refusal(`"${text}" is ${measuredQuantities[other].spoken}; ${unitsOf(quantity)}`)
  return refusal(`"${text}": the unit "${number.rest}" is not known; ${unitsOf(quantity)}`, nearestUnit(number, name))
}

function nearestUnit(number: NumberRead, name: MeasuredName): string | undefined {
  const { units } = measuredQuantities[name]
  const key = nearestName(
    unitKey(number.rest),
    units.flatMap(({ keys }) => keys),
  )
  const unit = units.find(({ keys }) => key !== undefined && keys.includes(key))
  return unit === undefined ? undefined : ifReadable(number.text, number.value, unit, name)
}

function withSuggestedUnit(number: NumberRead, name: MeasuredName): string | undefined {
  const { suggested } = measuredQuantities[name]
  if (name !== 'fraction' || number.value > 1) return ifReadable(number.text, number.value, suggested, name)
  const percent = Number((number.value * 100).toPrecision(12))
  return ifReadable(String(percent), percent, suggested, name)
}

function ifReadable(numberText: string, number: number, unit: Unit, name: MeasuredName): string | undefined {
  // A comma would end the value where it stands in braces.
  const text = `${numberText.replaceAll(',', '')} ${unit.name}`
  return amount(text, number, unit, measuredQuantities[name]).ok ? text : undefined
}

function unitsOf({ spoken, units }: MeasuredQuantity): string {
  const names = units.map(({ name }) => name)
  const last = names.pop() ?? ''
  return `${spoken} is written with ${names.length === 0 ? last : `${names.join(', ')} or ${last}`}`
}
