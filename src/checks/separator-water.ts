import { unknown, word, type Answer, type Context, type TurningPoint } from '../facts/index.js'
import { airSeparator, boiler, emitter, indirectTank, type Thing } from '../model/index.js'
import { firstMet, type Met } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { isInFamily, isOfKind } from './of-kind.js'

/** Where the water in the air separator comes from: hot from the boiler, from the emitters, or mixed from both. */
export const separatorWater = defineCheck('separatorWater', {
  of: airSeparator,
  answers: ['boiler', 'emitters', 'mixed'],
  answerable: true,
  judge,
})

function judge({ subject, network }: Context): Answer {
  const isTarget = (thing: Thing): boolean => isBoiler(thing) || takesHeat(thing)
  const met = firstMet(network, { component: subject.id, port: 'in' }, 'upstream', { isTarget })
  const hot = met.sure.find(({ thing }) => isBoiler(thing))
  const cool = met.sure.find(({ thing }) => takesHeat(thing))
  const witness = (hot ?? cool)?.witness.toReversed() ?? []
  if (hot !== undefined && cool !== undefined) return word('mixed', { witness })
  if (met.open || met.possible.length > 0 || met.sure.length === 0) return unknown({ witness, missing: met.missing })
  return hot === undefined ? word('emitters', { witness, ...cooledBy(cool) }) : word('boiler', { witness })
}

const isBoiler = isOfKind(boiler)

function cooledBy(cool: Met | undefined): { readonly turningPoint?: TurningPoint } {
  if (cool === undefined) return {}
  return { turningPoint: { at: cool.thing.id, because: 'the water comes from there, where it has given off its heat' } }
}

function takesHeat(thing: Thing): boolean {
  return thing.kind.name === indirectTank.name || isInFamily(thing, emitter)
}
