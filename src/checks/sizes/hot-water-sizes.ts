import type { Context } from '../../facts/index.js'
import { boiler, fixture, indirectTank, mixingValve, site, water, type Thing } from '../../model/index.js'
import {
  atmosphericPressure,
  firstHour,
  hotShare,
  hotWaterDemand,
  potableTank,
  recovery,
  reheatTime,
  type Sizing,
} from '../../sizing/index.js'
import { chain } from './chain.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'
import { askOnce } from '../ask-once.js'

/** Hot water that each tank gives, what the fixtures ask, and the expansion tank of its cold side. */
export function hotWaterSizes(context: Context): readonly SizeLine[] {
  const tanks = context.listed(indirectTank).things
  return [...tanks.flatMap((tank) => linesOf(context, tank)), ...demandLines(context)]
}

function linesOf(context: Context, tank: Thing): readonly SizeLine[] {
  const of = tank.id
  const { ask } = context
  const cold = askOnce(context, water, 'coldest')
  const number = (take: Taking, field: string): number => take.number(ask(field, tank))
  return [
    sizeLine({ name: 'hot part at the mixing valve', of }, 'fraction', (take) =>
      hotShare({ hot: number(take, 'storedTemperature'), cold: take.number(cold), mixed: delivered(context, take) }),
    ),
    sizeLine({ name: 'first hour, mixed', of }, 'volume', (take) => firstHourOf(context, take, tank)),
    sizeLine({ name: 'water warmed without end, mixed', of }, 'volumeFlow', (take) =>
      recovery({
        heatRate: heatIntoTank(context, take, tank),
        cold: take.number(cold),
        hot: delivered(context, take),
      }),
    ),
    sizeLine({ name: 'time to warm a cold tank', of }, 'time', (take) =>
      reheatTime({
        volume: number(take, 'volume'),
        from: take.number(cold),
        to: number(take, 'storedTemperature'),
        heatRate: heatIntoTank(context, take, tank),
      }),
    ),
    sizeLine({ name: 'potable expansion tank needed', of }, 'volume', (take) => potable(context, take, tank)),
  ]
}

/** Mixed water in the first hour of steady draw. */
export function firstHourOf(context: Context, take: Taking, tank: Thing): Sizing {
  const number = (field: string): number => take.number(context.ask(field, tank))
  return firstHour({
    volume: number('volume'),
    usable: number('usableFraction'),
    stored: number('storedTemperature'),
    cold: take.number(askOnce(context, water, 'coldest')),
    delivered: delivered(context, take),
    heatRate: heatIntoTank(context, take, tank),
  })
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

/** What reaches the tank: the least of what the boilers give and what the coil takes. */
function heatIntoTank({ ask, listed }: Context, take: Taking, tank: Thing): number {
  const outputs = take.all(boiler.name, listed(boiler)).map((one) => take.number(ask('output', one)))
  return Math.min(
    outputs.reduce((sum, output) => sum + output, 0),
    take.number(ask('coilRating', tank)),
  )
}

/** The temperature to which the valves of the house mix; where they differ the warmest. */
function delivered({ ask, listed }: Context, take: Taking): number {
  const valves = take.all(mixingValve.name, listed(mixingValve))
  return Math.max(...valves.map((valve) => take.number(ask('setTemperature', valve))))
}

function demandLines(context: Context): readonly SizeLine[] {
  const { ask, listed } = context
  const drawn = listed(fixture).things.filter((one) => ask('draw', one).state === 'number')
  if (drawn.length === 0) return []
  return [
    sizeLine({ name: 'demand of one hour, at the mixed temperature' }, 'volume', (take) =>
      hotWaterDemand({
        fixtures: drawn.map((one) => ({
          name: one.id,
          volume: take.number(ask('draw', one)),
          temperature: take.number(ask('hotWater', one)),
        })),
        cold: take.number(askOnce(context, water, 'coldest')),
        delivered: delivered(context, take),
      }),
    ),
  ]
}
