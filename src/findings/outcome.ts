import { isBinding } from '../rulebook/index.js'
import type { Outcome, Report } from './report.js'

type Weighed = Pick<Report, 'findings' | 'contradictions' | 'broken' | 'unheard'>

/** Failing when something binding fails; open when something binding cannot be told; clear only of what was asked. */
export function outcomeOf({ findings, contradictions, broken, unheard }: Weighed): Outcome {
  if (findings.some((one) => one.verdict === 'fail' && isBinding(one.severity))) return 'failing'
  const undecided = findings.some(
    (one) =>
      (one.verdict === 'undecided' && isBinding(one.severity)) || (one.couldBe !== undefined && isBinding(one.couldBe)),
  )
  const broke = broken.some((one) => isBinding(one.severity))
  return undecided || broke || contradictions.length > 0 || unheard.length > 0 ? 'open' : 'clear'
}

/** The first line of a report. It never says that there are no problems. */
export function headlineOf(
  outcome: Outcome,
  { findings, contradictions, broken, unheard }: Weighed,
  known: Report['known'],
): string {
  const wrong = findings.filter((one) => one.verdict === 'fail' && isBinding(one.severity)).length
  const told =
    findings.filter((one) => one.verdict === 'undecided' && isBinding(one.severity)).length +
    findings.filter((one) => one.couldBe !== undefined && isBinding(one.couldBe) && !isBinding(one.severity)).length
  const open = told + contradictions.length + broken.filter((one) => isBinding(one.severity)).length + unheard.length
  if (outcome !== 'clear') return `NOT READY: ${wrong} wrong, ${open} cannot be told`
  const lesser = findings.length
  const rest = lesser === 0 ? '' : `; ${lesser} of lesser weight to look at`
  return `Nothing wrong found in what was stated; ${known.photo} of ${known.values} values backed by a photo${rest}`
}
