import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { boiler, condensateTrap, type Thing } from '../model/index.js'
import { reachesWithout } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { condensateOf } from './condensate-way.js'
import { isOfKind } from './of-kind.js'
import { endsAt } from './ends-at.js'

/** Whether condensate of the boiler comes to a trap before anything else, be it a trap built into the boiler. */
export const trapFirst = defineCheck('trapFirst', { of: boiler, answers: ['yes', 'no'], answerable: true, judge })

function judge({ subject, network, ask }: Context): Answer {
  const builtIn = ask('trapBuiltIn')
  if (builtIn.state === 'word' && builtIn.word === 'yes')
    return word('yes', { witness: ['trap built into the boiler'] })
  const from = condensateOf(subject)
  const isOther = (thing: Thing): boolean => thing.id !== subject.id && !isTrap(thing)
  const other = reachesWithout(network, from, isOther, { things: isTrap })
  const trap = reachesWithout(network, from, isTrap, { things: isTrap })
  if (other.truth === -1 && trap.truth === 1) return word('yes', { witness: trap.witness })
  const without = other.truth === 1 ? other : trap
  const untrapped = other.truth === 1 || trap.truth === -1
  if (untrapped && builtIn.state === 'word')
    return word('no', endsAt(without.witness, 'condensate comes to it past no trap'))
  return unknown({ witness: without.witness, missing: [...builtIn.missing, ...other.missing, ...trap.missing] })
}

const isTrap = isOfKind(condensateTrap)
