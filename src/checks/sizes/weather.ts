import { unknown, type Context } from '../../facts/index.js'
import { building, site } from '../../model/index.js'
import { monthDegreeDays, weatherBins, type ClimateMonth, type Sizing, type WeatherBins } from '../../sizing/index.js'
import { askOnce } from '../ask-once.js'
import { addedUp, stated } from './chain.js'
import type { Taking } from './size-line.js'

/** A month with something that is stated for it. */
export interface MonthValue {
  readonly name: string
  readonly days: number
  readonly value: number
}

/** Mean outdoor temperature of each month; K. */
export function monthMeans(context: Context, take: Taking): readonly MonthValue[] {
  return monthsOf(context, take, { section: site, group: 'monthMeans' })
}

/** Fuel of each month; J. */
export function monthFuels(context: Context, take: Taking): readonly MonthValue[] {
  return monthsOf(context, take, { section: building, group: 'fuelOfMonths' })
}

/** Whether anything is said of the months at all. */
export function saysMonths(context: Context, { section, group }: MonthGroup): boolean {
  return calendar.some(([name]) => askOnce(context, section, `${group}.${name}`).state === 'number')
}

/** Degree days of a year as they are stated, or else added up from the means of the months. */
export function degreeDaysOfYear(context: Context, take: Taking): Sizing {
  const told = askOnce(context, site, 'degreeDays')
  if (told.state === 'number' || !saysMonths(context, { section: site, group: 'monthMeans' }))
    return stated('degree days of a year', take.number(told), 'K d')
  const base = degreeDaysBase(context, take)
  const months = climateMonths(context, take).map((month) => ({ month, sum: monthDegreeDays({ ...month, base }) }))
  for (const { sum } of months) if (!sum.sized) return sum
  return addedUp(
    'degree days of a year',
    months.map(({ month, sum }) => ({ name: month.name, value: sum.sized ? sum.value : NaN, unit: 'K d' })),
    'K d',
  )
}

/** Outdoor temperature below which degree days count; K. */
export function degreeDaysBase(context: Context, take: Taking): number {
  return take.number(askOnce(context, site, 'degreeDaysBase'))
}

/** The months of an average year with the spread of their days. */
export function climateMonths(
  context: Context,
  take: Taking,
): readonly (Omit<ClimateMonth, 'swing'> & { readonly name: string })[] {
  const spread = take.number(askOnce(context, site, 'daySpread'))
  return monthMeans(context, take).map(({ name, days, value }) => ({ name, days, mean: value, spread }))
}

/** Hours of an average year by outdoor temperature, in steps of one kelvin. */
export function binsOfYear(context: Context, take: Taking): WeatherBins {
  const swing = take.number(askOnce(context, site, 'daySwing'))
  const months = climateMonths(context, take)
  // What is missing is noted by now, and no month with an unknown mean has hours.
  if (months.some(({ mean, spread }) => Number.isNaN(mean + spread + swing))) return { binned: false, why: '' }
  return weatherBins(
    months.map((month) => ({ ...month, swing })),
    1,
  )
}

interface MonthGroup {
  readonly section: { readonly name: string }
  readonly group: string
}

/** Where not a single month is told, the whole is missing, not each. */
function monthsOf(context: Context, take: Taking, { section, group }: MonthGroup): readonly MonthValue[] {
  if (saysMonths(context, { section, group }))
    return calendar.map(([name, days]) => ({
      name,
      days,
      value: take.number(askOnce(context, section, `${group}.${name}`)),
    }))
  take.number(unknown({ missing: [{ subject: section.name, fact: group }] }))
  return []
}

/** February as it is on average. */
const calendar = [
  ['january', 31],
  ['february', 28.25],
  ['march', 31],
  ['april', 30],
  ['may', 31],
  ['june', 30],
  ['july', 31],
  ['august', 31],
  ['september', 30],
  ['october', 31],
  ['november', 30],
  ['december', 31],
] as const
