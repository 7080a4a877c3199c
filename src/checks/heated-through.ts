import type { Context, Missing } from '../facts/index.js'
import { emitter, type Thing } from '../model/index.js'
import { betweenInFlow, type Told } from '../network/index.js'
import { isInFamily } from './of-kind.js'

/** Whether boiler water runs through an emitter and back. */
export interface HeatedThrough {
  readonly truth: boolean | undefined
  /** The emitter, where there is one. */
  readonly through?: Thing
  readonly witness: readonly string[]
  readonly missing: readonly Missing[]
}

/** Whether there is an emitter through which water runs from a boiler and back, with the flow, past nothing that is barred. */
export function heatedThrough({ network }: Context, { id }: Thing, barred: (thing: Thing) => Told): HeatedThrough {
  const round = { from: { component: id, port: 'supply' }, to: { component: id, port: 'return' } }
  const { sure, possible, open, missing, witness } = betweenInFlow(network, round, { things: barred })
  const through = sure.find(isEmitter)
  if (through !== undefined) return { truth: true, through, witness: witness(through), missing: [] }
  const mayRun = open || possible.some(isEmitter)
  return mayRun ? { truth: undefined, witness: [], missing } : { truth: false, witness: [], missing: [] }
}

const isEmitter = (thing: Thing): boolean => isInFamily(thing, emitter)
