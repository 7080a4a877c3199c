import type { Problem } from '../model/index.js'

/** What is wrong, before its place is known. */
export interface Wrong {
  readonly code: string
  readonly message: string
  readonly nearest?: string
}

/** Something wrong in a text, by its place in the text; line and column are counted when all are known. */
export interface Mistake extends Wrong {
  /** Characters from the start of the text. */
  readonly at: number
  readonly pointer?: string
}

/** Line and column as editors count them, both from 1; a column is one UTF-16 code unit. */
export interface Position {
  readonly line: number
  readonly column: number
}

/** How many problems of one text are told: nobody mends more of them line by line. */
export const mostProblems = 1000

/** Mistakes as problems, in reading order. */
export function problemsOf(
  mistakes: readonly Mistake[],
  file: string,
  positionOf: (at: number) => Position,
): readonly Problem[] {
  const ordered = mistakes.toSorted((a, b) => a.at - b.at)
  const told = ordered.slice(0, mostProblems).map((mistake) => problemOf(mistake, file, positionOf))
  if (ordered.length <= mostProblems) return told
  return [...told, { code: 'more-problems', pointer: '', message: 'More problems are not shown.', file }]
}

/** The beginning of a text, short enough to stand in a sentence. */
export function excerpt(text: string): string {
  return text.length <= longestExcerpt ? text : `${text.slice(0, longestExcerpt)}...`
}

const longestExcerpt = 60

function problemOf(
  { at, pointer = '', ...said }: Mistake,
  file: string,
  positionOf: (at: number) => Position,
): Problem {
  return { ...said, pointer, file, ...positionOf(at) }
}
