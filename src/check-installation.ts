import { writeReport, type Report, type ReportOptions } from './findings/index.js'
import { gatherFacts } from './facts/index.js'
import { judge } from './judging/index.js'
import { readInstallation, readShelf, type InstallationWritten } from './model/index.js'
import type { Rulebook } from './rulebook/index.js'

/** What a check may be told beside the document. */
export interface CheckOptions extends ReportOptions {
  /** Makers' data as written, one item a model; `use:` in the document names them. */
  readonly equipment?: readonly unknown[]
}

/**
 * Judges a written installation under a rulebook. Pure: no clock, no files, no network; the same input gives the same bytes.
 *
 * @throws UnreadableInstallation when the document or an equipment file cannot be read, with every problem
 * @example
 * const report = checkInstallation({ installation: 1 }, openRulebook({ ruleSets: [base] }))
 * report.outcome // 'open'
 */
export function checkInstallation(
  document: InstallationWritten,
  rulebook: Rulebook,
  options: CheckOptions = {},
): Report {
  const equipment = readShelf(options.equipment ?? [], rulebook.model)
  const installation = readInstallation(document, rulebook.model, equipment)
  const facts = gatherFacts(installation, rulebook.facts)
  const verdicts = judge(rulebook, facts)
  return writeReport({ document, facts, rulebook, verdicts }, options)
}
