import type { Problem } from '../model/index.js'
import type { Position } from './mistake.js'

/** Where a value stands in its text, and everything inside it. */
export interface Spot {
  readonly at: number
  /** Where its key stands, for a value in a map. */
  readonly keyAt?: number
  readonly inside?: ReadonlyMap<string, Spot>
}

/** Finds the place of a JSON pointer in a text. */
export type Locate = (pointer: string) => Position | undefined

/** A text that knows where each of its values and keys stands. */
export interface Located {
  /** Where the value stands. */
  readonly locate: Locate
  /** Where the key of the value stands; the value itself where it has no key, as in a list. */
  readonly locateKey: Locate
}

/** Answers pointers from the spots of a text. */
export function locatedBy(root: Spot, positionOf: (at: number) => Position): Located {
  const place = (pointer: string, atOf: (spot: Spot) => number): Position | undefined => {
    const spot = spotOf(root, pointer)
    return spot === undefined ? undefined : positionOf(atOf(spot))
  }
  return {
    locate: (pointer) => place(pointer, (spot) => spot.at),
    locateKey: (pointer) => place(pointer, (spot) => spot.keyAt ?? spot.at),
  }
}

/**
 * Adds file, line and column to problems that carry only a pointer. An unknown key is shown at the key; a value that is
 * missing is shown at the nearest thing around it. Problems that name a file keep what they say.
 */
export function withPositions(problems: readonly Problem[], file: string, source: Located): Problem[] {
  return problems.map((problem) =>
    problem.file === undefined ? { ...problem, file, ...placeOf(problem, source) } : problem,
  )
}

function placeOf(problem: Problem, source: Located): Position | undefined {
  const own = problem.code === 'unknown-key' ? source.locateKey(problem.pointer) : undefined
  return own ?? nearestAround(problem.pointer, source.locate)
}

function nearestAround(pointer: string, locate: Locate): Position | undefined {
  const found = locate(pointer)
  if (found !== undefined || !pointer.includes('/')) return found
  return nearestAround(pointer.slice(0, pointer.lastIndexOf('/')), locate)
}

function spotOf(root: Spot, pointer: string): Spot | undefined {
  const [first, ...steps] = pointer.split('/')
  if (first !== '') return undefined
  return steps.map(plainStep).reduce<Spot | undefined>((spot, step) => spot?.inside?.get(step), root)
}

function plainStep(step: string): string {
  return step.replaceAll('~1', '/').replaceAll('~0', '~')
}
