import type { Context } from '../facts/index.js'
import { drainReceptor, neutralizer, type Thing } from '../model/index.js'
import { reachesWithout, type IsTarget, type NetworkAnswer } from '../network/index.js'
import { isOfKind } from './of-kind.js'

/** Whether untreated condensate of a boiler comes to a target. An open end may lead there: acid runs out of it. */
export function untreatedWay({ subject, network }: Context, isTarget: IsTarget): NetworkAnswer {
  return reachesWithout(network, condensateOf(subject), isTarget, { things: isNeutralizer, crossing: true })
}

export const condensateOf = (boiler: Thing): { readonly component: string; readonly port: string } => ({
  component: boiler.id,
  port: 'condensate',
})

export const isNeutralizer = isOfKind(neutralizer)
export const isDrain = isOfKind(drainReceptor)
