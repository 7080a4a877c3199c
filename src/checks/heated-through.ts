import type { Context, Missing } from '../facts/index.js'
import { boiler, emitter, type Thing } from '../model/index.js'
import { firstMet, type Told } from '../network/index.js'
import { isInFamily } from './of-kind.js'

/** Whether boiler water runs through an emitter and back. */
export interface HeatedThrough {
  readonly truth: boolean | undefined
  readonly witness: readonly string[]
  readonly missing: readonly Missing[]
}

/**
 * Whether there is an emitter through which water runs from a boiler and back, with the flow, past nothing that is barred.
 * Each emitter that is met is followed back until one leads home.
 */
export function heatedThrough(context: Context, source: Thing, barred: (thing: Thing) => Told): HeatedThrough {
  const { network } = context
  const gives = firstMet(network, { component: source.id, port: 'supply' }, 'downstream', { isTarget, things: barred })
  const backs = gives.sure.map((met) => ({ met, back: home(context, met.thing, barred) }))
  const through = backs.find(({ back }) => back.sure.some(({ thing }) => thing.id === source.id))
  if (through !== undefined) {
    const way = through.back.sure.find(({ thing }) => thing.id === source.id)?.witness ?? []
    return { truth: true, witness: [...through.met.witness, ...way], missing: [] }
  }
  const mayLead = backs.filter(({ back }) => back.open || back.possible.length > 0)
  if (!gives.open && gives.possible.length === 0 && mayLead.length === 0)
    return { truth: false, witness: [], missing: [] }
  return { truth: undefined, witness: [], missing: [...gives.missing, ...mayLead.flatMap(({ back }) => back.missing)] }
}

function home({ network }: Context, thing: Thing, barred: (thing: Thing) => Told): ReturnType<typeof firstMet> {
  const isBoiler = (each: Thing): boolean => each.kind.name === boiler.name
  return firstMet(network, { component: thing.id, port: 'out' }, 'downstream', { isTarget: isBoiler, things: barred })
}

function isTarget(thing: Thing): boolean {
  return isInFamily(thing, emitter)
}
