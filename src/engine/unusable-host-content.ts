import { printProblem, type Problem } from '../model/index.js'

/** Rules, facts or operators of a host that cannot stand beside ours. Holds every problem found, with place and nearest name. */
export class UnusableHostContent extends Error {
  readonly code = 'unusable-host-content'
  constructor(readonly problems: readonly Problem[]) {
    super(
      `${problems.length} problem${problems.length === 1 ? '' : 's'} in what the host adds:\n${problems.map(printProblem).join('\n')}`,
    )
    this.name = 'UnusableHostContent'
  }
}
