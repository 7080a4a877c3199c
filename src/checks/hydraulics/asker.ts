import type { Answer, Context, Missing } from '../../facts/index.js'
import type { Thing } from '../../model/index.js'

/** Asks for values that a calculation needs exactly, and notes all that it lacks. */
export interface Asker {
  readonly number: (of: Thing, fact: string) => number | undefined
  readonly word: (of: Thing, fact: string) => string | undefined
  /** Members of a list that is whole. */
  readonly list: (of: Thing, fact: string) => readonly string[] | undefined
  readonly lacks: (subject: string, fact: string) => undefined
  /** What has been noted so far. */
  readonly trail: () => AskerTrail
}

/** What would let the calculation go on, and whether anything that it used was assumed. */
export interface AskerTrail {
  readonly missing: readonly Missing[]
  readonly assumed: boolean
}

export function openAsker({ ask }: Context): Asker {
  const missing: Missing[] = []
  const noted = { assumed: false }
  const lacks = (subject: string, fact: string): undefined => void missing.push({ subject, fact })
  const told = (of: Thing, fact: string): Answer => {
    const answer = ask(fact, of)
    noted.assumed ||= answer.assumed
    return answer
  }
  return {
    number: (of, fact) => {
      const answer = told(of, fact)
      return answer.state === 'number' && answer.low === answer.high ? answer.low : lacks(of.id, fact)
    },
    word: (of, fact) => {
      const answer = told(of, fact)
      return answer.state === 'word' ? answer.word : lacks(of.id, fact)
    },
    list: (of, fact) => {
      const answer = told(of, fact)
      return answer.state === 'list' && answer.complete ? answer.members : lacks(of.id, fact)
    },
    lacks,
    trail: () => ({ missing, assumed: noted.assumed }),
  }
}
