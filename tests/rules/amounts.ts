/** All numbers from low to high; what is not known is anything. */
export interface Range {
  readonly low: number
  readonly high: number
}

export const anything: Range = { low: -Infinity, high: Infinity }

// Units of one quantity are multiples of one of them. From the definitions: 12 in to the foot, 144 in2 to the square foot.
const units: Readonly<Record<string, readonly [string, number]>> = {
  '': ['plain', 1],
  in: ['inch', 1],
  ft: ['inch', 12],
  in2: ['square inch', 1],
  ft2: ['square inch', 144],
  psi: ['psi', 1],
  F: ['degF', 1],
  VA: ['VA', 1],
  'Btu/h': ['Btu/h', 1],
  gal: ['gallon', 1],
  gpm: ['gpm', 1],
  'ft/s': ['foot a second', 1],
  'in wc': ['psi', 249.08891 / 6894.757293168],
  'in/ft': ['inch a foot', 1],
  min: ['minute', 1],
  ppm: ['part a million', 1],
  '%': ['percent', 1],
}

/** Reads an amount with this file's own small table of units, so that the units room is held against something else. */
export function amountOf(text: string): Range | undefined {
  const day = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text)
  if (day !== null) return exactly(dayNumber(Number(day[1]), Number(day[2]), Number(day[3])))
  const match = /^(-?[\d.,/-]+) ?([A-Za-z/%]*2?(?: wc)?)$/.exec(text)
  const unit = units[match?.[2] ?? 'none']
  const number = numberOf(match?.[1] ?? '')
  if (unit === undefined && match?.[2] !== undefined && number !== undefined)
    throw new Error(`teach tests/rules/amounts.ts the unit "${match[2]}"`)
  return unit === undefined || number === undefined ? undefined : exactly(number * unit[1])
}

/** A bare year beside a day means all its days. */
export function yearOf(text: string): Range | undefined {
  const year = /^\d{4}$/.exec(text)
  return year === null ? undefined : { low: dayNumber(Number(text), 1, 1), high: dayNumber(Number(text), 12, 31) }
}

export function isDay(text: string): boolean {
  return /^\d{4}-\d{2}-\d{2}$/.test(text)
}

function exactly(value: number): Range {
  return { low: value, high: value }
}

function dayNumber(year: number, month: number, day: number): number {
  return Date.UTC(year, month - 1, day) / 86_400_000
}

/** `12`, `3/4`, `1-1/4`, `143,000`. */
function numberOf(text: string): number | undefined {
  const [whole = '', fraction] = text.startsWith('-')
    ? [text]
    : text.includes('-')
      ? text.split('-')
      : text.includes('/')
        ? ['0', text]
        : [text]
  const [over = '0', under = '1'] = (fraction ?? '0/1').split('/')
  const value = Number(whole.replaceAll(',', '')) + Number(over) / Number(under)
  return whole === '' || Number.isNaN(value) ? undefined : value
}
