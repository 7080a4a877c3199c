import type { Answer } from '../facts/index.js'

/** A fact as json-rules-engine holds it: a number in SI, a word, or a list of words. */
export type ExactValue = number | string | readonly string[]

/** What is known exactly; a bound, an open list and an unknown are undefined. */
export function exactValue(answer: Answer): ExactValue | undefined {
  switch (answer.state) {
    case 'number':
      return answer.low === answer.high ? answer.low : undefined
    case 'word':
      return answer.word
    case 'list':
      return answer.complete ? [...answer.members] : undefined
    case 'unknown':
      return undefined
    default:
      return neverAnswer(answer)
  }
}

function neverAnswer(answer: never): never {
  throw new TypeError(`no such answer: ${String(answer)}`)
}
