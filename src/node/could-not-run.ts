import { printProblem, type Problem } from '../model/index.js'

/** Something that a person gave cannot be used. Holds every problem found, each with its place and the nearest right name. */
export class CouldNotRun extends Error {
  readonly code = 'could-not-run'
  constructor(readonly problems: readonly Problem[]) {
    super(problems.map(printProblem).join('\n'))
    this.name = 'CouldNotRun'
  }
}
