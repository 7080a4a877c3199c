import { nearestName } from '../../units/index.js'
import { pointerOf, type Problem } from '../problem.js'

export type Steps = readonly (string | number)[]

/** Gathers every problem of one reading, so that all are told at once. */
export interface ProblemList {
  readonly found: Problem[]
  readonly add: (code: string, steps: Steps, message: string, more?: Partial<Problem>) => undefined
}

export function problemList(): ProblemList {
  const found: Problem[] = []
  const add = (code: string, steps: Steps, message: string, more: Partial<Problem> = {}): undefined => {
    found.push({ code, pointer: pointerOf(steps), message, ...more })
  }
  return { found, add }
}

/** The same as a spread, ready for a problem: `{ nearest }` when a known name is near, else nothing. */
export function nearestIn(word: string, names: Iterable<string>): { nearest?: string } {
  const nearest = nearestName(word, [...names])
  return nearest === undefined ? {} : { nearest }
}
