import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { boiler } from '../model/index.js'
import { defineCheck } from '../rulebook/index.js'
import { wayToRelief } from './way-to-relief.js'
import { blockedAt } from './blocked-at.js'

/** Whether the way from the boiler to a relief valve is free of anything that closes, checks, strains or reduces; `absent` when no way leads to one. */
export const reliefWay = defineCheck('reliefWay', {
  of: boiler,
  answers: ['open', 'blocked', 'absent'],
  answerable: true,
  judge,
})

function judge(context: Context): Answer {
  const free = wayToRelief(context, { closing: true, checking: true, restricting: true })
  if (free.truth === 1) return word('open', { witness: free.witness })
  if (free.truth === 0) return unknown({ witness: free.witness, missing: free.missing })
  const any = wayToRelief(context, {})
  if (any.truth === 1) return word('blocked', { witness: any.witness, ...blockedAt(free) })
  if (any.truth === -1) return word('absent')
  return unknown({ witness: any.witness, missing: any.missing })
}
