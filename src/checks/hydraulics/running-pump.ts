import type { Context } from '../../facts/index.js'
import type { Thing } from '../../model/index.js'
import type { Pump, PumpMode } from '../../sizing/index.js'
import type { Asker } from './asker.js'

/** A circulator as it runs in a state; undefined where a number is missing. */
export function runningPump(thing: Thing, state: Thing, context: Context, asker: Asker): Pump | undefined {
  const curve = curveOf(thing, context, asker)
  const control = controlOf(thing, state, asker)
  return curve === undefined || control === undefined ? undefined : { curve, control }
}

function curveOf(thing: Thing, { parts }: Context, asker: Asker): Pump['curve'] | undefined {
  const { things, more } = parts('curve', thing)
  if (more > 0 || things.length === 0) return asker.lacks(thing.id, 'curve')
  const points = things.map((point) => ({ flow: asker.number(point, 'flow'), head: asker.number(point, 'head') }))
  const known = points.flatMap(({ flow, head }) => (flow === undefined || head === undefined ? [] : [{ flow, head }]))
  return known.length < points.length ? undefined : known.toSorted((one, other) => one.flow - other.flow)
}

function controlOf(thing: Thing, state: Thing, asker: Asker): PumpMode | undefined {
  const hotWaterMode = asker.word(thing, 'hotWaterMode')
  const purpose = asker.word(state, 'purpose')
  const mode = asker.word(thing, 'mode')
  if (hotWaterMode === undefined || purpose === undefined || mode === undefined) return undefined
  if (hotWaterMode === 'full-speed' && purpose === 'hot-water') return { mode: 'constant-speed' }
  if (mode === 'constant-speed') return { mode }
  if (mode !== 'constant-pressure' && mode !== 'proportional-pressure') return asker.lacks(thing.id, 'mode')
  const setHead = asker.number(thing, 'setHead')
  return setHead === undefined ? undefined : { mode, setHead }
}
