import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { expansionTank, type Thing } from '../model/index.js'
import { reachesWithout, type NetworkAnswer } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { isTankJoint } from './is-tank-joint.js'

/** Whether every other expansion tank of the same water joins it at the same place, with nothing but fittings and valves between. */
export const soleConnection = defineCheck('soleConnection', {
  of: expansionTank,
  answers: ['yes', 'no'],
  answerable: true,
  judge,
})

function judge(context: Context): Answer {
  const { things, more } = context.listed(expansionTank)
  const others = things.filter(({ id }) => id !== context.subject.id)
  const asked = others.map((other) => ({ other, any: wayTo(context, other, false), near: wayTo(context, other, true) }))
  const apart = asked.find(({ any, near }) => any.truth === 1 && near.truth === -1)
  if (apart !== undefined) {
    const turningPoint = { at: apart.other.id, because: 'it joins the water somewhere else' }
    return word('no', { witness: apart.any.witness, turningPoint })
  }
  const open = asked.filter(({ any, near }) => any.truth !== -1 && near.truth !== 1)
  const missing = open.flatMap(({ any, near }) => [...any.missing, ...near.missing])
  if (more > 0) return unknown({ missing: [...missing, { subject: expansionTank.name, fact: 'count' }] })
  return open.length > 0 ? unknown({ missing }) : word('yes')
}

function wayTo({ subject, network }: Context, other: Thing, near: boolean): NetworkAnswer {
  const from = { component: subject.id, port: 'system' }
  const isOther = (thing: Thing): boolean => thing.id === other.id
  const isBetween = (thing: Thing): boolean => !isTankJoint(thing)
  const search = { crossing: true, allListed: true, ...(near ? { things: isBetween } : {}) }
  return reachesWithout(network, from, isOther, search)
}
