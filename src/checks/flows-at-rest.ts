import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { boiler, bypassValve, checkValve, circulator, zoneValve, type Thing } from '../model/index.js'
import type { Told } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { heatedThrough } from './heated-through.js'
import { isOfKind } from './of-kind.js'

/** Whether warm water can rise from the boiler through an emitter and back while every pump rests: past no check and no zone valve that is shut without power. */
export const flowsAtRest = defineCheck('flowsAtRest', {
  of: boiler,
  answers: ['yes', 'no'],
  answerable: true,
  judge,
})

function judge(context: Context): Answer {
  const { truth, through, witness, missing } = heatedThrough(context, context.subject, (thing) => stops(context, thing))
  if (truth === undefined) return unknown({ missing })
  if (!truth) return word('no')
  const because = 'warm water rises into it, and nothing on the way stops it'
  return word('yes', { witness, ...(through === undefined ? {} : { turningPoint: { at: through.id, because } }) })
}

const alwaysStops = isOfKind(checkValve, bypassValve)

function stops({ ask }: Context, thing: Thing): Told {
  if (alwaysStops(thing)) return true
  const [field, stopping] = thing.kind.name === zoneValve.name ? ['normally', 'closed'] : ['checkBuiltIn', 'yes']
  if (thing.kind.name !== zoneValve.name && thing.kind.name !== circulator.name) return false
  const told = ask(field, thing)
  return told.state === 'word' ? told.word === stopping : { subject: thing.id, fact: field }
}
