import { unknown, word, type Answer } from '../facts/index.js'
import type { NetworkAnswer } from '../network/index.js'
import { blockedAt } from './blocked-at.js'
import { endsAt } from './ends-at.js'

/**
 * What the drawn lines say, as an answer with its way.
 *
 * @param ending what is wrong where the way ends, if a way is what should not be
 */
export function yesOrNo(found: NetworkAnswer, ending?: string): Answer {
  const { truth, witness, missing } = found
  switch (truth) {
    case 1:
      return word('yes', ending === undefined ? { witness } : endsAt(witness, ending))
    case -1:
      return word('no', { witness, ...blockedAt(found) })
    case 0:
      return unknown({ witness, missing })
    default:
      return neverTruth(truth)
  }
}

function neverTruth(truth: never): never {
  throw new TypeError(`no such truth: ${String(truth)}`)
}
