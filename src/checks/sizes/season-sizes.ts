import type { Context } from '../../facts/index.js'
import type { Thing } from '../../model/index.js'
import {
  burnerYear,
  cannotSize,
  condensingReturn,
  condensingShare,
  efficiencyAtReturn,
  makerEfficiency,
  resetReturn,
  seasonEfficiency,
  sized,
  type EfficiencyPoint,
  type ResetDesign,
  type Sizing,
  type WeatherBin,
} from '../../sizing/index.js'
import { si } from '../../units/index.js'
import { chain } from './chain.js'
import { designOfHouse } from './curve-sizes.js'
import { withFlue } from './flue-of-boiler.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'
import { binsOfYear } from './weather.js'
import { zoneLoads } from './zone-loads.js'

/** Common practice at full fire: the flue leaves so much warmer than the water enters. */
const approach = si('temperatureDifference', '9 F')

/** How a boiler does with the returns of the house, and over an average year. */
export function seasonSizes(context: Context, one: Thing): readonly SizeLine[] {
  const of = one.id
  return [
    sizeLine({ name: 'warmest return that condenses', of }, 'temperature', (take) => dewReturn(context, take, one)),
    sizeLine({ name: 'efficiency with the return of the design day', of }, 'fraction', (take) =>
      efficiencyAt(context, take, { one, part: 1 }),
    ),
    sizeLine({ name: 'efficiency with the return of half the load', of }, 'fraction', (take) =>
      efficiencyAt(context, take, { one, part: 0.5 }),
    ),
    sizeLine({ name: "part of the year's heat made condensing", of }, 'fraction', (take) =>
      chain(dewReturn(context, take, one), (warmest) =>
        inSeason(context, take, (bins, design) => condensingShare({ bins, design, condensingReturn: warmest })),
      ),
    ),
    sizeLine({ name: 'efficiency over an average year, by the curve of its maker', of }, 'fraction', (take) =>
      inSeason(context, take, (bins, design) => seasonEfficiency({ bins, design, curve: curveOf(context, take, one) })),
    ),
    sizeLine({ name: 'time of a year with less load than its lowest fire', of }, 'time', (take) =>
      cyclingTime(context, take, one),
    ),
  ]
}

/** Goes on with the weather of an average year and the design of the house. */
export function inSeason(
  context: Context,
  take: Taking,
  next: (bins: readonly WeatherBin[], design: ResetDesign) => Sizing,
): Sizing {
  const design = designOfHouse(context, take)
  const year = binsOfYear(context, take)
  return year.binned ? next(year.bins, design) : cannotSize(year.why)
}

/** Efficiency with the return that goes with a part of the load: by the maker's curve, or by what the flue carries off. */
export function efficiencyAt(
  context: Context,
  take: Taking,
  { one, part }: { readonly one: Thing; readonly part: number },
): Sizing {
  const design = designOfHouse(context, take)
  const outdoor = design.balance - part * (design.balance - design.designOutdoor)
  return chain(resetReturn(design, outdoor), (back) =>
    context.parts('efficiencyCurve', one).things.length > 0
      ? makerEfficiency(curveOf(context, take, one), back)
      : withFlue(context, take, {
          burner: one,
          next: (flue) => byFlue(efficiencyAtReturn({ ...flue, approach, jacketLoss: 0 }, back)),
        }),
  )
}

function byFlue(efficiency: Sizing): Sizing {
  if (!efficiency.sized) return efficiency
  return { ...efficiency, assumed: [...efficiency.assumed, flueAboveReturn, 'nothing lost by the jacket'] }
}

const flueAboveReturn = 'the flue leaves 9 F above the return'

function dewReturn(context: Context, take: Taking, one: Thing): Sizing {
  return withFlue(context, take, {
    burner: one,
    next: (flue) => {
      const warmest = condensingReturn({ ...flue, approach })
      return warmest.sized ? { ...warmest, assumed: [...warmest.assumed, flueAboveReturn] } : warmest
    },
  })
}

function curveOf({ ask, parts }: Context, take: Taking, one: Thing): readonly EfficiencyPoint[] {
  const curve = parts('efficiencyCurve', one)
  if (curve.things.length === 0 || curve.more > 0) take.note([{ subject: one.id, fact: 'efficiencyCurve' }])
  return curve.things.map((point) => ({
    return: take.number(ask('returnTemperature', point)),
    efficiency: take.number(ask('efficiency', point)),
  }))
}

function cyclingTime(context: Context, take: Taking, one: Thing): Sizing {
  const lowestOutput = take.number(context.ask('minimumOutput', one))
  const highestOutput = take.number(context.ask('output', one))
  return chain(zoneLoads(context, take), (designLoad) =>
    inSeason(context, take, (bins, line) => {
      const year = burnerYear({ bins, line, designLoad, lowestOutput, highestOutput })
      if (!year.told) return cannotSize(year.why)
      const { cycling, following, short } = year.hours
      const value = cycling * secondsOfHour
      return sized({
        value,
        working: [
          { name: 'load above the highest fire', value: short * secondsOfHour, unit: 's' },
          { name: 'load that the burner follows', value: following * secondsOfHour, unit: 's' },
          { name: 'load below the lowest fire', value, unit: 's' },
        ],
        assumed: [
          'the load is straight in the outdoor temperature',
          'hours of a month spread as a normal distribution',
        ],
        valid: true,
      })
    }),
  )
}

const secondsOfHour = 3600
