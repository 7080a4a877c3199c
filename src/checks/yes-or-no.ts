import { unknown, word, type Answer } from '../facts/index.js'
import type { NetworkAnswer } from '../network/index.js'

/** What the drawn lines say, as an answer with its way. */
export function yesOrNo({ truth, witness, missing }: NetworkAnswer): Answer {
  switch (truth) {
    case 1:
      return word('yes', { witness })
    case -1:
      return word('no', { witness })
    case 0:
      return unknown({ witness, missing })
    default:
      return neverTruth(truth)
  }
}

function neverTruth(truth: never): never {
  throw new TypeError(`no such truth: ${String(truth)}`)
}
