import type { Problem } from '../model/index.js'

/** A place in a text, both counted from 1. */
export interface Position {
  readonly line: number
  readonly column: number
}

/** Finds the values and keys of one file by JSON pointer. */
export interface Located {
  /** Where the value at a pointer stands. */
  readonly locate: (pointer: string) => Position | undefined
  /** Where the key at a pointer stands. */
  readonly locateKey: (pointer: string) => Position | undefined
}

/** By name of file. */
export type Positions = ReadonlyMap<string, Located>

/**
 * Adds line and column to problems that name a file. A mistake in a key is shown at the key; what is missing is shown at the
 * nearest thing around it.
 */
export function placeProblems(problems: readonly Problem[], positions: Positions): readonly Problem[] {
  return problems.map((problem) => {
    const file = positions.get(problem.file ?? '')
    return file === undefined || problem.line !== undefined ? problem : { ...problem, ...placeOf(problem, file) }
  })
}

function placeOf(problem: Problem, file: Located): Position | undefined {
  const key = isInKey(problem) ? file.locateKey(problem.pointer) : undefined
  return key ?? nearestAround(problem.pointer, file)
}

/** The message speaks of the key itself, as of an unknown key or a fact that stands as key. */
function isInKey({ pointer, message, received }: Problem): boolean {
  const last = (pointer.split('/').at(-1) ?? '').replaceAll('~1', '/').replaceAll('~0', '~')
  return last === received || message.includes(`"${last}"`)
}

function nearestAround(pointer: string, file: Located): Position | undefined {
  const found = file.locate(pointer)
  return found !== undefined || pointer === '' ? found : nearestAround(pointer.slice(0, pointer.lastIndexOf('/')), file)
}
