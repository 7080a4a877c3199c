import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { boiler, state, zoneValve, type Thing } from '../model/index.js'
import type { Told } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { heatedThrough } from './heated-through.js'

/** Whether water of a boiler runs through an emitter while the state holds: past no zone valve but those that it says stand open. */
export const heatsZones = defineCheck('heatsZones', {
  of: state,
  answers: ['yes', 'no'],
  answerable: true,
  judge,
})

function judge(context: Context): Answer {
  const { things, more } = context.listed(boiler)
  const open = context.ask('open')
  const shut = (thing: Thing): Told => isShut(open, thing, context.subject)
  const ways = things.map((source) => heatedThrough(context, source, shut))
  const hot = ways.find(({ truth }) => truth === true)
  if (hot?.through !== undefined) {
    const turningPoint = { at: hot.through.id, because: 'water of the boiler runs through it meanwhile' }
    return word('yes', { witness: hot.witness, turningPoint })
  }
  const missing = ways.flatMap((way) => way.missing)
  if (more > 0) return unknown({ missing: [...missing, { subject: boiler.name, fact: 'count' }] })
  return ways.every(({ truth }) => truth === false) ? word('no') : unknown({ missing })
}

function isShut(open: Answer, thing: Thing, { id }: Thing): Told {
  if (thing.kind.name !== zoneValve.name) return false
  if (open.state !== 'list') return { subject: id, fact: 'open' }
  if (open.members.includes(thing.id)) return false
  return open.complete || { subject: id, fact: 'open' }
}
