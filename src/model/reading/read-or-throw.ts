import type { Installation } from '../installation.js'
import type { Model } from '../model.js'
import { printProblem, type Problem } from '../problem.js'
import type { Equipment } from './read-equipment.js'
import { tryReadInstallation } from './read-installation.js'

/** A document that cannot be read. Holds every problem found, each with its place and the nearest right name. */
export class UnreadableInstallation extends Error {
  readonly code = 'unreadable-installation'
  constructor(readonly problems: readonly Problem[]) {
    super(
      `${problems.length} problem${problems.length === 1 ? '' : 's'} in the document:\n${problems.map(printProblem).join('\n')}`,
    )
    this.name = 'UnreadableInstallation'
  }
}

/**
 * Reads a written document, or throws one error that tells every problem.
 *
 * @throws UnreadableInstallation
 */
export function readInstallation(document: unknown, model: Model, equipment: readonly Equipment[] = []): Installation {
  const read = tryReadInstallation(document, model, equipment)
  if (!read.ok) throw new UnreadableInstallation(read.problems)
  return read.installation
}
