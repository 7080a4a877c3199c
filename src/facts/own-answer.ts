import type { Entry } from '../model/index.js'
import { between, list, unknown, word, type Answer, type Missing } from './answer.js'

/** What an entry says as an answer. A field without entry is the question itself. */
export function answerOf(entry: Entry | undefined, question: Missing): Answer {
  if (entry === undefined) return unknown({ missing: [question] })
  const assumed = entry.standing !== 'stated'
  const { value } = entry
  switch (value.type) {
    case 'quantity':
      return between(value.low, value.high, { assumed, entry, missing: value.low === value.high ? [] : [question] })
    case 'word':
      return word(value.word, { assumed, entry })
    case 'list':
      return list(value.members, value.complete, { assumed, entry, missing: value.complete ? [] : [question] })
    default:
      return neverValue(value)
  }
}

function neverValue(value: never): never {
  throw new TypeError(`no such value: ${String(value)}`)
}
