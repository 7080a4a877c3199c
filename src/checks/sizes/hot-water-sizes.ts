import type { Context } from '../../facts/index.js'
import { indirectTank, site, water, type Thing } from '../../model/index.js'
import { atmosphericPressure, hotShare, potableTank, recovery, reheatTime, type Sizing } from '../../sizing/index.js'
import { si } from '../../units/index.js'
import { askOnce } from '../ask-once.js'
import { chain } from './chain.js'
import { coilReheat } from './coil-sizes.js'
import { demandSizes } from './demand-sizes.js'
import { hygieneSizes } from './hygiene-sizes.js'
import { recirculationSizes } from './recirculation-sizes.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'
import { givenIn, tankSupply } from './tank-supply.js'

const hour = si('time', '1 h')
const tenMinutes = si('time', '10 min')
const day = si('time', '24 h')

/** Hot water that each tank gives, what the fixtures ask, the way of the water, and the expansion tank of its cold side. */
export function hotWaterSizes(context: Context): readonly SizeLine[] {
  const tanks = context.listed(indirectTank).things
  return [
    ...tanks.flatMap((tank) => linesOf(context, tank)),
    ...demandSizes(context),
    ...hygieneSizes(context),
    ...recirculationSizes(context),
  ]
}

function linesOf(context: Context, tank: Thing): readonly SizeLine[] {
  const of = tank.id
  const supply = (take: Taking): ReturnType<typeof tankSupply> => tankSupply(context, take, tank)
  const within = (name: string, period: number): SizeLine =>
    sizeLine({ name, of, readAs: 'water' }, 'volume', (take) => givenIn(context, take, { tank, period }))
  return [
    sizeLine({ name: 'hot part at the mixing valve', of }, 'fraction', (take) => {
      const { stored, cold, delivered } = supply(take)
      return hotShare({ hot: stored, cold, mixed: delivered })
    }),
    within('first ten minutes, mixed', tenMinutes),
    within('first hour, mixed', hour),
    within('whole day, mixed', day),
    sizeLine({ name: 'water warmed without end, mixed', of }, 'volumeFlow', (take) => {
      const { heatRate, cold, delivered } = supply(take)
      return recovery({ heatRate, cold, hot: delivered })
    }),
    sizeLine({ name: 'time to warm a cold tank', of }, 'time', (take) => {
      const { volume, cold, stored, heatRate } = supply(take)
      return reheatTime({ volume, from: cold, to: stored, heatRate })
    }),
    sizeLine({ name: 'time to warm a cold tank by its coil', of }, 'time', (take) => coilReheat(context, take, tank)),
    sizeLine({ name: 'potable expansion tank needed', of }, 'volume', (take) => potable(context, take, tank)),
  ]
}

/** Mixed water in the first hour of steady draw. */
export function firstHourOf(context: Context, take: Taking, tank: Thing): Sizing {
  return givenIn(context, take, { tank, period: hour })
}

function potable(context: Context, take: Taking, tank: Thing): Sizing {
  const { ask } = context
  return chain(atmosphericPressure(take.number(askOnce(context, site, 'altitude'))), (atmosphere) =>
    potableTank({
      stored: take.number(ask('volume', tank)),
      cold: take.number(askOnce(context, water, 'coldest')),
      hot: take.number(ask('storedTemperature', tank)),
      supply: take.number(askOnce(context, water, 'staticPressure')),
      highest: take.number(askOnce(context, water, 'highestPressure')),
      atmosphere,
    }),
  )
}
