import { gatherFacts } from '../facts/index.js'
import { readAcceptances, type Judgement, type ReportOptions } from '../findings/index.js'
import { readEquipment, readInstallation, UnreadableInstallation, type Equipment, type Model } from '../model/index.js'
import type { Rulebook } from '../rulebook/index.js'

/** What a check through the engine may be told about the document, as without it. */
export interface DocumentOptions extends ReportOptions {
  /** Makers' data as written, one item a model; `use:` in the document names them. */
  readonly equipment?: readonly unknown[]
}

/** Everything before judging: the document read, its facts ready to be asked, its approvals understood. */
export function prepare(
  document: unknown,
  rulebook: Rulebook,
  { equipment = [] }: DocumentOptions,
): Omit<Judgement, 'verdicts'> {
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
