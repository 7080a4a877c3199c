import type { Context } from '../../facts/index.js'
import {
  castIronBaseboard,
  castIronRadiator,
  emitter,
  fanCoil,
  finTube,
  site,
  unitHeater,
  zone,
  type Thing,
} from '../../model/index.js'
import {
  cannotSize,
  castIronRadiator as castIron,
  emitterOutput,
  lengthForLoad,
  outdoorForReturn,
  requiredWater,
  resetReturn,
  resetSupply,
  type EmitterRating,
  type ResetDesign,
  type Sizing,
} from '../../sizing/index.js'
import { si } from '../../units/index.js'
import { chain, stated } from './chain.js'
import { sizeLine, toldLine, type SizeLine, type Taking } from './size-line.js'
import { isOfKind } from '../of-kind.js'
import { askOnce } from '../ask-once.js'

/** What each emitter gives at the design water, what water it needs, which one sets the curve, and the curve. */
export function emitterSizes(context: Context): readonly SizeLine[] {
  const { things } = context.listed(emitter)
  return [
    ...things.flatMap((thing) => linesOf(context, thing)),
    ...emptyZones(context),
    toldLine({ name: 'emitter that sets the curve' }, (take) => deciding(context, take)),
    ...curveLines(context),
    sizeLine({ name: 'outdoor temperature from which the return stays below 130 F' }, 'temperature', (take) =>
      outdoorForReturn(designOfHouse(context, take), si('temperature', '130 F')),
    ),
  ]
}

/** Zones of which it is said that they have no emitter at all. */
function emptyZones({ ask, listed }: Context): readonly SizeLine[] {
  return listed(zone).things.flatMap((one) => {
    const emitters = ask('emitters', one)
    const empty = emitters.state === 'list' && emitters.complete && emitters.members.length === 0
    return empty
      ? [{ name: 'emitters', of: one.id, state: 'impossible', why: `The zone ${one.id} has no emitter.` }]
      : []
  })
}

function linesOf(context: Context, thing: Thing): readonly SizeLine[] {
  const of = thing.id
  return [
    sizeLine({ name: 'output at the design water', of }, 'heatRate', (take) =>
      outputAtDesignWater(context, take, thing),
    ),
    sizeLine(
      { name: hasFan(thing) ? 'entering water that it needs' : 'mean water that it needs', of },
      'temperature',
      (take) => needed(context, take, thing),
    ),
    ...(thing.kind.name === finTube.name ? [elementLine(context, thing)] : []),
  ]
}

function elementLine(context: Context, thing: Thing): SizeLine {
  const { ask } = context
  return sizeLine({ name: 'element that its room needs', of: thing.id, readAs: 'distance' }, 'length', (take) => {
    const excess = take.number(ask('ratedDifference', thing))
    const exponent = take.number(ask('exponent', thing))
    return lengthForLoad({
      load: take.number(ask('roomLoad', thing)),
      meter: { output: take.number(ask('ratedOutputPerLength', thing)), excess, exponent },
      excess: designMean(context, take, thing) - air(context, take, thing),
      kept: take.number(ask('coverFactor', thing)),
    })
  })
}

/** What an emitter gives with the water for which its zone is designed. */
export function outputAtDesignWater(context: Context, take: Taking, thing: Thing): Sizing {
  const water = designMean(context, take, thing)
  const output = emitterOutput({
    rating: ratingOf(context, take, thing),
    excess: water - air(context, take, thing),
    kept: take.number(context.ask('coverFactor', thing)),
  })
  return water === Infinity ? cannotSize(`No zone feeds ${thing.id}.`) : output
}

function needed(context: Context, take: Taking, thing: Thing): Sizing {
  return requiredWater({
    rating: ratingOf(context, take, thing),
    load: take.number(context.ask('roomLoad', thing)),
    air: air(context, take, thing),
    kept: take.number(context.ask('coverFactor', thing)),
  })
}

/** Cast iron by its EDR, fin-tube by its length, coils with fans by the water and air that enter, everything else by the plate. */
function ratingOf({ ask }: Context, take: Taking, thing: Thing): EmitterRating {
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

function hasFan({ kind }: Thing): boolean {
  return kind.name === unitHeater.name || kind.name === fanCoil.name
}

/** Air on the floor, which enters baseboard, is 5 F cooler than the room: common practice, and in the ratings of baseboard. */
const floorAirBelowRoom = si('temperatureDifference', '5 F')

function air({ ask, find }: Context, take: Taking, thing: Thing): number {
  const space = find(take.word(ask('space', thing)))
  const room = space === undefined ? NaN : take.number(ask('designTemperature', space))
  return isBaseboard(thing) ? room - floorAirBelowRoom : room
}

const isBaseboard = isOfKind(finTube, castIronBaseboard)

/** The water that drives an emitter: what enters a coil with a fan, else the mean; where several zones feed it, the coolest. */
function designMean(context: Context, take: Taking, thing: Thing): number {
  const { ask, listed } = context
  const zones = take.all(zone.name, listed(zone)).filter((one) => take.list(ask('emitters', one)).includes(thing.id))
  const waters = zones.map((one) => designWater(context, take, one))
  return Math.min(...waters.map(({ supply, back }) => (hasFan(thing) ? supply : (supply + back) / 2)))
}

function designWater({ ask }: Context, take: Taking, of: Thing): { readonly supply: number; readonly back: number } {
  const supply = take.number(ask('designSupply', of))
  return { supply, back: supply - take.number(ask('designDifference', of)) }
}

function deciding(context: Context, take: Taking): string {
  const lines = take.all(emitter.name, context.listed(emitter)).map((thing) => ({
    thing,
    water: needed(context, take, thing),
  }))
  const worst = lines.reduce<(typeof lines)[number] | undefined>(
    (most, one) => (one.water.sized && (most === undefined || warmth(one.water) > warmth(most.water)) ? one : most),
    undefined,
  )
  return worst === undefined ? 'none could be counted' : `${worst.thing.id}, ${worst.thing.kind.spoken}`
}

const warmth = (sizing: Sizing): number => (sizing.sized ? sizing.value : -Infinity)

/** Supply and return over the season, by the first zone that states its design water. */
function curveLines(context: Context): readonly SizeLine[] {
  const first = firstDesigned(context)
  if (first === undefined) return []
  return curveSteps.flatMap((share) => [
    sizeLine({ name: `supply at ${share.spoken}`, of: first.id }, 'temperature', (take) =>
      atShare(context, take, first, share.part, resetSupply),
    ),
    sizeLine({ name: `return at ${share.spoken}`, of: first.id }, 'temperature', (take) =>
      atShare(context, take, first, share.part, resetReturn),
    ),
  ])
}

function firstDesigned({ ask, listed }: Context): Thing | undefined {
  return listed(zone).things.find((one) => ask('designSupply', one).state === 'number')
}

/** Design water of the house: that of the first zone which states its own. */
export function designOfHouse(context: Context, take: Taking): ResetDesign {
  const first = firstDesigned(context)
  if (first !== undefined) return resetDesign(context, take, first)
  take.note([{ subject: zone.name, fact: 'designSupply' }])
  return { supply: NaN, return: NaN, room: NaN, balance: NaN, designOutdoor: NaN, exponent: NaN }
}

const curveSteps = [
  { spoken: 'the design temperature', part: 1 },
  { spoken: 'three quarters of the load', part: 0.75 },
  { spoken: 'half of the load', part: 0.5 },
  { spoken: 'a quarter of the load', part: 0.25 },
] as const

function atShare(
  context: Context,
  take: Taking,
  of: Thing,
  part: number,
  curve: (design: ResetDesign, outdoor: number) => Sizing,
): Sizing {
  const design = resetDesign(context, take, of)
  const outdoor = design.balance - part * (design.balance - design.designOutdoor)
  return chain(stated('outdoors', outdoor, 'K'), () => curve(design, outdoor))
}

function resetDesign(context: Context, take: Taking, of: Thing): ResetDesign {
  const { supply, back } = designWater(context, take, of)
  const emitters = take.list(context.ask('emitters', of)).flatMap((id) => context.find(id) ?? [])
  const one = emitters[0]
  const room = one === undefined ? NaN : air(context, take, one)
  const exponent = one === undefined ? NaN : ratingOf(context, take, one).exponent
  const designOutdoor = take.number(askOnce(context, site, 'outdoorDesign'))
  return { supply, return: back, room, balance: room, designOutdoor, exponent }
}
