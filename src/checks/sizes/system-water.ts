import type { Context } from '../../facts/index.js'
import { boiler, bufferTank, castIronRadiator, emitter, indirectTank, line, type Thing } from '../../model/index.js'
import { estimatedPart, pipeVolume, systemVolume, type FilledPart, type SystemVolume } from '../../sizing/index.js'
import { pipeSize } from '../../tables/index.js'
import type { Taking } from './size-line.js'
import { listedPipe } from '../listed-pipe.js'

/** Whether old radiators of which no figure is known count by their EDR. A verdict never rests on that. */
export interface WaterWords {
  readonly estimates: boolean
}

/** Water of the heating system, part by part: what plates and rulers tell, and estimates where they are wanted. */
export function systemWater(context: Context, take: Taking, words: WaterWords): SystemVolume {
  const { ask, listed } = context
  const held = (kind: { readonly name: string }, field: string): readonly FilledPart[] =>
    take.all(kind.name, listed(kind.name)).map((thing) => exact(thing.id, take.number(ask(field, thing))))
  return systemVolume([
    ...held(boiler, 'waterVolume'),
    ...held(bufferTank, 'volume'),
    ...held(indirectTank, 'coilVolume'),
    ...take.all(emitter.name, listed(emitter)).map((thing) => emitterWater(context, take, thing, words)),
    ...take
      .all(line.name, listed(line))
      .filter(({ medium }) => medium === 'heatingWater')
      .map((thing) => pipeWater(context, take, thing)),
  ])
}

const exact = (name: string, volume: number): FilledPart => ({ name, least: volume, likely: volume, most: volume })

function emitterWater({ ask }: Context, take: Taking, thing: Thing, { estimates }: WaterWords): FilledPart {
  const volume = ask('waterVolume', thing)
  if (estimates && volume.state === 'unknown' && thing.kind.name === castIronRadiator.name)
    return estimatedPart({ name: thing.id, emitter: 'cast-iron-radiator', size: take.number(ask('edr', thing)) })
  return exact(thing.id, take.number(volume))
}

/** Water in a drawn line. */
export function pipeWater({ ask }: Context, take: Taking, thing: Thing): FilledPart {
  const length = take.number(ask('pipe.length', thing))
  if (length === 0) return exact(thing.id, 0)
  const name = listedPipe(take.word(ask('pipe.type', thing)))
  const size = take.number(ask('pipe.size', thing))
  const inside = name === undefined ? undefined : pipeSize(name, size)?.inside
  const volume = pipeVolume({ insideDiameter: inside ?? NaN, length })
  return exact(thing.id, volume.sized ? volume.value : NaN)
}
