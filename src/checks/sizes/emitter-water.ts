import type { Context } from '../../facts/index.js'
import {
  castIronBaseboard,
  castIronRadiator,
  fanCoil,
  finTube,
  unitHeater,
  zone,
  type Thing,
} from '../../model/index.js'
import { castIronRadiator as castIron, type EmitterRating } from '../../sizing/index.js'
import { si } from '../../units/index.js'
import { isOfKind } from '../of-kind.js'
import type { Taking } from './size-line.js'

/** Cast iron by its EDR, fin-tube by its length, coils with fans by the water and air that enter, everything else by the plate. */
export function ratingOf({ ask }: Context, take: Taking, thing: Thing): EmitterRating {
  if (thing.kind.name === castIronRadiator.name) return castIron(take.number(ask('edr', thing)))
  const output = ratedOutputOf(ask, take, thing)
  if (hasFan(thing)) {
    const excess = take.number(ask('enteringWater', thing)) - take.number(ask('enteringAir', thing))
    return { output, excess, exponent: straight }
  }
  const rating = { excess: take.number(ask('ratedDifference', thing)), exponent: take.number(ask('exponent', thing)) }
  return { output, ...rating }
}

function ratedOutputOf(ask: Context['ask'], take: Taking, thing: Thing): number {
  if (thing.kind.name !== finTube.name) return take.number(ask('ratedOutput', thing))
  return take.number(ask('ratedOutputPerLength', thing)) * take.number(ask('elementLength', thing))
}

/** With a fan the output is straight in the difference of what enters. */
const straight = 1

/** Whether a fan moves the air: then water and air that enter count. */
export function hasFan({ kind }: Thing): boolean {
  return kind.name === unitHeater.name || kind.name === fanCoil.name
}

/** Air on the floor, which enters baseboard, is 5 F cooler than the room: common practice, and in the ratings of baseboard. */
const floorAirBelowRoom = si('temperatureDifference', '5 F')

/** Air about an emitter; K. */
export function air({ ask, find }: Context, take: Taking, thing: Thing): number {
  const space = find(take.word(ask('space', thing)))
  const room = space === undefined ? NaN : take.number(ask('designTemperature', space))
  return isBaseboard(thing) ? room - floorAirBelowRoom : room
}

const isBaseboard = isOfKind(finTube, castIronBaseboard)

/** The water that drives an emitter: what enters a coil with a fan, else the mean; where several zones feed it, the coolest. */
export function designMean(context: Context, take: Taking, thing: Thing): number {
  const { ask, listed } = context
  const zones = take.all(zone.name, listed(zone)).filter((one) => take.list(ask('emitters', one)).includes(thing.id))
  const waters = zones.map((one) => designWater(context, take, one))
  return Math.min(...waters.map(({ supply, back }) => (hasFan(thing) ? supply : (supply + back) / 2)))
}

/** Water of a zone on the design day; K. */
export function designWater(
  { ask }: Context,
  take: Taking,
  of: Thing,
): { readonly supply: number; readonly back: number } {
  const supply = take.number(ask('designSupply', of))
  return { supply, back: supply - take.number(ask('designDifference', of)) }
}
