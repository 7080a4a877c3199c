import { firstImpossible } from '../first-impossible.js'
import { normalShare } from './normal-distribution.js'

/** Hours with one outdoor temperature. */
export interface WeatherBin {
  /** K, the middle of the bin. */
  readonly outdoor: number
  /** h in a year */
  readonly hours: number
}

/** A month as climate tables print it. */
export interface ClimateMonth {
  readonly days: number
  /** K */
  readonly mean: number
  /** K, standard deviation of the daily means: 3.5 to 5.5 K in winter at middle latitudes. */
  readonly spread: number
  /** K from the mean of a day to its warmest hour. */
  readonly swing: number
}

/** Bins, coldest first, or why there are none. */
export type WeatherBins =
  | { readonly binned: true; readonly bins: readonly WeatherBin[]; readonly assumed: readonly string[] }
  | { readonly binned: false; readonly why: string }

/**
 * Weather bins where no hourly data is at hand: the hours of each month spread about its mean as a normal distribution, wide
 * enough for the spread of the days and the swing within them.
 *
 * @param width K of a bin
 * @example
 * weatherBins([{ days: 30, mean: 273.15, spread: 4.5, swing: 4 }], 1)
 */
export function weatherBins(months: readonly ClimateMonth[], width: number): WeatherBins {
  const why = firstImpossible(
    ['width of a bin', width, 'above zero'],
    ...months.flatMap(({ days, mean, spread, swing }) => [
      ['days of a month', days, 'zero or more'] as const,
      ['mean of a month', mean, 'above zero'] as const,
      ['spread of the days', spread, 'above zero'] as const,
      ['swing of a day', swing, 'zero or more'] as const,
    ]),
  )
  if (why !== undefined) return { binned: false, why }
  const hourly = months.map(({ days, mean, spread, swing }) => ({
    hours: days * 24,
    mean,
    // A cosine of amplitude A has the variance A**2 / 2.
    deviation: Math.hypot(spread, swing / Math.SQRT2),
  }))
  const from = Math.floor(Math.min(...hourly.map(({ mean, deviation }) => mean - reach * deviation)) / width)
  const to = Math.ceil(Math.max(...hourly.map(({ mean, deviation }) => mean + reach * deviation)) / width)
  const count = Number.isFinite(to - from) ? to - from : 0
  if (count > mostBins) return { binned: false, why: `Bins of ${width} K would be ${count}: take wider ones.` }
  const bins = Array.from({ length: count }, (_, index) => {
    const [low, high] = [(from + index) * width, (from + index + 1) * width]
    const hours = hourly.reduce((sum, { hours: all, mean, deviation }) => {
      return sum + all * (normalShare((high - mean) / deviation) - normalShare((low - mean) / deviation))
    }, 0)
    return { outdoor: (low + high) / 2, hours }
  })
  return { binned: true, bins, assumed: ['hours of a month spread as a normal distribution'] }
}

/** Standard deviations to either side; beyond lies less than a second in a year. */
const reach = 6
const mostBins = 10_000
