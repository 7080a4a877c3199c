import { gatherFacts } from '../facts/index.js'
import type { Judgement, ReportOptions } from '../findings/index.js'
import { readInstallation, readShelf } from '../model/index.js'
import type { Rulebook } from '../rulebook/index.js'

/** What a check through the engine may be told about the document, as without it. */
export interface DocumentOptions extends ReportOptions {
  /** Makers' data as written, one item a model; `use:` in the document names them. */
  readonly equipment?: readonly unknown[]
}

/** Everything before judging: the document read, its facts ready to be asked. */
export function prepare(
  document: unknown,
  rulebook: Rulebook,
  { equipment = [] }: DocumentOptions,
): Omit<Judgement, 'verdicts'> {
  const installation = readInstallation(document, rulebook.model, readShelf(equipment, rulebook.model))
  return { facts: gatherFacts(installation, rulebook.facts), rulebook, document }
}
