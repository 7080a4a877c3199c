import type { Context } from '../../facts/index.js'
import { emitter, finTube, zone, type Thing } from '../../model/index.js'
import { cannotSize, emitterOutput, lengthForLoad, requiredWater, type Sizing } from '../../sizing/index.js'
import { curveSizes } from './curve-sizes.js'
import { air, designMean, hasFan, ratingOf } from './emitter-water.js'
import { sizeLine, toldLine, type SizeLine, type Taking } from './size-line.js'

/** What each emitter gives at the design water, what water it needs, which one sets the curve, and the curve. */
export function emitterSizes(context: Context): readonly SizeLine[] {
  const { things } = context.listed(emitter)
  return [
    ...things.flatMap((thing) => linesOf(context, thing)),
    ...emptyZones(context),
    toldLine({ name: 'emitter that sets the curve' }, (take) => deciding(context, take)),
    ...curveSizes(context),
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
