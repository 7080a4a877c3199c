import { readAcceptances, writeReport, type Judgement, type Report, type ReportOptions } from './findings/index.js'
import { gatherFacts } from './facts/index.js'
import { judge } from './judging/index.js'
import { readEquipment, readInstallation, UnreadableInstallation, type Equipment, type InstallationWritten, type Model } from './model/index.js'
import type { Rulebook } from './rulebook/index.js'

/** What a check may be told beside the document. */
export interface CheckOptions extends ReportOptions {
  /** Makers' data as written, one item a model; `use:` in the document names them. */
  readonly equipment?: readonly unknown[]
}

/**
 * Judges a written installation under a rulebook. Pure: no clock, no files, no network; the same input gives the same bytes.
 *
 * @throws UnreadableInstallation when the document cannot be read, with every problem
 * @example
 * const report = checkInstallation({ installation: 1 }, openRulebook({ ruleSets: [base] }))
 * report.outcome // 'open'
 */
export function checkInstallation(document: InstallationWritten, rulebook: Rulebook, options: CheckOptions = {}): Report {
  const prepared = prepareCheck(document, rulebook, options)
  return writeReport({ ...prepared, verdicts: judge(rulebook, prepared.facts) }, options)
}

/** Everything before judging: the document read, its facts ready to be asked, its approvals understood. */
export function prepareCheck(document: unknown, rulebook: Rulebook, { equipment = [] }: CheckOptions = {}): Omit<Judgement, 'verdicts'> {
  const installation = readInstallation(document, rulebook.model, openEquipment(equipment, rulebook.model))
  const facts = gatherFacts(installation, rulebook.facts)
  const approvals = readAcceptances(facts, rulebook)
  if (!approvals.ok) throw new UnreadableInstallation(approvals.problems)
  return { facts, rulebook, acceptances: approvals.acceptances, document }
}

function openEquipment(written: readonly unknown[], model: Model): readonly Equipment[] {
  const read = written.map((one) => readEquipment(one, model))
  const problems = read.flatMap((one) => (one.ok ? [] : one.problems))
  if (problems.length > 0) throw new UnreadableInstallation(problems)
  return read.flatMap((one) => (one.ok ? [one.equipment] : []))
}
