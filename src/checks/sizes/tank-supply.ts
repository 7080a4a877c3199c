import type { Context } from '../../facts/index.js'
import { boiler, mixingValve, water, type Thing } from '../../model/index.js'
import { deliverable, type Sizing } from '../../sizing/index.js'
import { askOnce } from '../ask-once.js'
import type { Taking } from './size-line.js'

/** What a tank holds and gets, in SI. */
export interface TankSupply {
  readonly volume: number
  readonly usable: number
  readonly stored: number
  readonly cold: number
  readonly delivered: number
  readonly heatRate: number
}

/** A tank with its source. */
export function tankSupply(context: Context, take: Taking, tank: Thing): TankSupply {
  const number = (field: string): number => take.number(context.ask(field, tank))
  return {
    volume: number('volume'),
    usable: number('usableFraction'),
    stored: number('storedTemperature'),
    cold: take.number(askOnce(context, water, 'coldest')),
    delivered: delivered(context, take),
    heatRate: heatIntoTank(context, take, tank),
  }
}

/** Mixed water that a full tank and its source give in a period, s. */
export function givenIn(context: Context, take: Taking, { tank, period }: TankPeriod): Sizing {
  return deliverable({ ...tankSupply(context, take, tank), period })
}

/** A tank over so many seconds. */
export interface TankPeriod {
  readonly tank: Thing
  readonly period: number
}

/** Output of all boilers; W. */
export function outputOfBoilers({ ask, listed }: Context, take: Taking): number {
  return take.all(boiler.name, listed(boiler)).reduce((sum, one) => sum + take.number(ask('output', one)), 0)
}

/** What reaches the tank: the least of what the boilers give and what the coil takes. */
export function heatIntoTank(context: Context, take: Taking, tank: Thing): number {
  return Math.min(outputOfBoilers(context, take), take.number(context.ask('coilRating', tank)))
}

/** The temperature to which the valves of the house mix; where they differ the warmest. */
export function delivered({ ask, listed }: Context, take: Taking): number {
  const valves = take.all(mixingValve.name, listed(mixingValve))
  return Math.max(...valves.map((valve) => take.number(ask('setTemperature', valve))))
}
