/** Something wrong with what a person wrote: where it stands, what was expected, and the nearest right name. */
export interface Problem {
  /** Stable name of the mistake, such as `unknown-key` or `unreadable-quantity`. */
  readonly code: string
  /** JSON pointer into the document: `/components/0/setPressure`. */
  readonly pointer: string
  readonly message: string
  readonly expected?: string
  readonly received?: string
  /** The nearest right name or the text to write instead. */
  readonly nearest?: string
  readonly file?: string
  readonly line?: number
  readonly column?: number
}

/** One line for a reader: place first, then the sentence, then the mend. */
export function printProblem(problem: Problem): string {
  const position = problem.line === undefined ? '' : `:${problem.line}:${problem.column ?? 1}`
  const place = problem.file === undefined ? problem.pointer || '/' : `${problem.file}${position}`
  const mend = problem.nearest === undefined ? '' : ` Did you mean "${problem.nearest}"?`
  return `${place}  ${problem.message}${mend} [${problem.code}]`
}

/** A JSON pointer from its steps, escaped as RFC 6901 asks. */
export function pointerOf(steps: readonly (string | number)[]): string {
  return steps.map((step) => `/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('')
}
