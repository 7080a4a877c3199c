import { firstImpossible } from '../first-impossible.js'
import { cannotSize, type Sizing, sized } from '../sizing.js'
import { monthDegreeDays } from './degree-days.js'
import { type StraightFit, straightFit } from './straight-fit.js'

/** A bill with its weather. */
export interface BilledPeriod {
  readonly days: number
  /** K outdoors on average. */
  readonly mean: number
  /** K, standard deviation of the daily means. */
  readonly spread: number
  /** J burned, gross. */
  readonly energy: number
}

/** What a year of bills tells: summer bills give the other uses, winter bills the house. */
export interface VariableBaseFit {
  /** K outdoors from which no heat is needed. */
  readonly balance: Sizing
  /** W/K of burned fuel: times the efficiency, the conductance of the house. */
  readonly fuelConductance: Sizing
  /** W of burned fuel for hot water, cooking and drying. */
  readonly otherUses: Sizing
  /** r2 of the best base; unknown where there is none. */
  readonly fit?: number
}

/**
 * Balance temperature, house and other uses from bills over all seasons: of the bases tried, the one whose degree days follow
 * the fuel best (variable-base method, Fels 1986, recalled).
 *
 * @param bases K, to try
 */
export function variableBase(periods: readonly BilledPeriod[], bases: readonly number[]): VariableBaseFit {
  const why = firstImpossible(
    ...periods.flatMap(({ days, energy }) => [
      ['days of a bill', days, 'above zero'] as const,
      ['fuel of a bill', energy, 'zero or more'] as const,
    ]),
  )
  const [best] = (why === undefined ? bases : [])
    .flatMap((base) => fitAt(periods, base))
    .toSorted((one, other) => other.line.fit - one.line.fit)
  if (best === undefined) return none(why ?? 'No base gives a line: the bills want at least three different months.')
  const { base, line } = best
  const steps = { assumed: ['other uses are the same all year'], valid: line.fit >= 0.8 }
  const of = (name: string, value: number, unit: string): Sizing =>
    sized({
      value,
      working: [
        { name: 'r2', value: line.fit, unit: '1' },
        { name, value, unit },
      ],
      ...steps,
    })
  return {
    balance: of('balance temperature', base, 'K'),
    fuelConductance: of('fuel for a degree', line.slope, 'W/K'),
    otherUses: of('fuel for other uses', Math.max(0, line.intercept), 'W'),
    fit: line.fit,
  }
}

interface FitAtBase {
  readonly base: number
  readonly line: StraightFit
}

function fitAt(periods: readonly BilledPeriod[], base: number): readonly FitAtBase[] {
  const points = periods.flatMap((period) => {
    const degrees = monthDegreeDays({ ...period, base })
    return degrees.sized ? [[degrees.value / period.days, period.energy / (period.days * 86_400)] as const] : []
  })
  const line = points.length < Math.max(3, periods.length) ? undefined : straightFit(points)
  return line === undefined || line.slope <= 0 ? [] : [{ base, line }]
}

function none(why: string): VariableBaseFit {
  return { balance: cannotSize(why), fuelConductance: cannotSize(why), otherUses: cannotSize(why) }
}
