import { decimalText } from './decimal-text.js'
import { type ParsedQuantity, point, refusal } from './parsed-quantity.js'

const written = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/
const almostWritten = /^(\d{4})[-/.](\d{1,2})(?:[-/.](\d{1,2}))?$/

/** Reads `2024`, `2024-07` or `2024-07-01` as its first and last day. */
export function parseDate(text: string): ParsedQuantity {
  const match = written.exec(text)
  if (match === null) return refusal(`"${text}" is not a date; write 2024, 2024-07 or 2024-07-01`, paddedDate(text))
  const year = Number(match[1])
  if (match[2] === undefined) return { ok: true, low: dayNumber(year, 1, 1), high: dayNumber(year, 12, 31) }
  const month = Number(match[2])
  if (month < 1 || month > 12) return refusal(`"${text}" has no such month`)
  const last = daysInMonth(year, month)
  if (match[3] === undefined) return { ok: true, low: dayNumber(year, month, 1), high: dayNumber(year, month, last) }
  const day = Number(match[3])
  if (day < 1 || day > last) return refusal(`"${text}" is not in the calendar`)
  return point(dayNumber(year, month, day))
}

/** The calendar day a day number falls in, with the part of the day gone by when decimals for it are asked. */
export function printDate(days: number, dayDecimals = 0): string {
  const rounded = dayDecimals === 0 ? Math.floor(days) : Number(days.toFixed(dayDecimals))
  const whole = Math.floor(rounded)
  const { year, month, day } = calendarDay(whole)
  const date = `${yearText(year)}-${digits(month, 2)}-${digits(day, 2)}`
  return whole === rounded ? date : `${date} + ${decimalText(rounded - whole, dayDecimals)} days`
}

// Both conversions count years from March, so that the leap day comes last, in cycles of 400 years.
const daysInCycle = 146_097
const daysFromCycleStartTo1970 = 719_468

function dayNumber(year: number, month: number, day: number): number {
  const marchYear = month > 2 ? year : year - 1
  const dayOfYear = daysBeforeMonth(monthFromMarch(month)) + day - 1
  const leapDays = Math.floor(marchYear / 4) - Math.floor(marchYear / 100) + Math.floor(marchYear / 400)
  return marchYear * 365 + leapDays + dayOfYear - daysFromCycleStartTo1970
}

function calendarDay(days: number): { year: number; month: number; day: number } {
  const fromStart = days + daysFromCycleStartTo1970
  const cycle = Math.floor(fromStart / daysInCycle)
  const dayOfCycle = fromStart - cycle * daysInCycle
  const leapDays = Math.floor(dayOfCycle / 1460) - Math.floor(dayOfCycle / 36_524) + Math.floor(dayOfCycle / 146_096)
  const yearOfCycle = Math.floor((dayOfCycle - leapDays) / 365)
  const yearStart = 365 * yearOfCycle + Math.floor(yearOfCycle / 4) - Math.floor(yearOfCycle / 100)
  const dayOfYear = dayOfCycle - yearStart
  const fromMarch = Math.floor((5 * dayOfYear + 2) / 153)
  const month = fromMarch < 10 ? fromMarch + 3 : fromMarch - 9
  const year = cycle * 400 + yearOfCycle + (month > 2 ? 0 : 1)
  return { year, month, day: dayOfYear - daysBeforeMonth(fromMarch) + 1 }
}

function daysInMonth(year: number, month: number): number {
  if (month === 12) return 31
  return dayNumber(year, month + 1, 1) - dayNumber(year, month, 1)
}

function monthFromMarch(month: number): number {
  return month > 2 ? month - 3 : month + 9
}

function daysBeforeMonth(fromMarch: number): number {
  return Math.floor((153 * fromMarch + 2) / 5)
}

function paddedDate(text: string): string | undefined {
  const match = almostWritten.exec(text)
  if (match === null) return undefined
  const [, year, month, day] = match
  const parts = [year, month, day].filter((part) => part !== undefined)
  const padded = parts.map((part) => part.padStart(2, '0')).join('-')
  return parseDate(padded).ok ? padded : undefined
}

function yearText(year: number): string {
  return year < 0 ? `-${digits(-year, 4)}` : digits(year, 4)
}

function digits(number: number, width: number): string {
  return String(number).padStart(width, '0')
}
