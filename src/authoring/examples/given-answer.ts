import { between, list, unknown, word, type Answer, type Missing } from '../../facts/index.js'
import type { Entry } from '../../model/index.js'

/** Which of the given values count: all, those that are stated, those that a photo shows. */
export interface Look {
  readonly statedOnly: boolean
  readonly photoOnly: boolean
}

/** What a value of an example answers in one look. */
export function givenAnswer(entry: Entry | undefined, look: Look, question: Missing): Answer {
  const missing = [question]
  if (entry === undefined) return unknown({ missing })
  const assumed = entry.standing !== 'stated'
  if ((look.statedOnly && assumed) || (look.photoOnly && entry.evidence.length === 0)) return unknown({ missing })
  const { value } = entry
  switch (value.type) {
    case 'quantity':
      return between(value.low, value.high, { assumed, entry, missing: value.low === value.high ? [] : missing })
    case 'word':
      return word(value.word, { assumed, entry })
    case 'list':
      return list(value.members, value.complete, { assumed, entry, missing: value.complete ? [] : missing })
    default:
      return neverValue(value)
  }
}

function neverValue(value: never): never {
  throw new TypeError(`no such value: ${String(value)}`)
}
