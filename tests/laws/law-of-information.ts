import { isWorse, severities, type Severity } from '../../src/rulebook/index.js'
import type { Snapshot, Told } from './snapshot.js'

/**
 * The law of information: saying less may make a verdict undecided, and nothing else.
 * Returns what breaks it, in words; nothing when it holds. Documents that contradict themselves are outside it.
 */
export function breaksLawOfInformation(before: Snapshot, after: Snapshot): readonly string[] {
  if (before.contradictions.length > 0) return []
  const fresh = after.contradictions.map((message) => `saying less made a contradiction: ${message}`)
  const outcome =
    after.outcome === before.outcome || after.outcome === 'open'
      ? []
      : [`outcome ${before.outcome} became ${after.outcome}`]
  return [...fresh, ...outcome, ...[...before.verdicts].flatMap(([key, was]) => breaksAt(key, was, after))]
}

function breaksAt(key: string, was: Told, after: Snapshot): readonly string[] {
  const is = after.verdicts.get(key)
  if (was.verdict === 'broken') return []
  if (is === undefined) return unlisted(key, was, after)
  return [
    ...demandsFlipped(key, was, is),
    ...(usesAssumed(was) || usesAssumed(is) ? [] : [...severityGrew(key, was, is), ...promiseBroken(key, was, is)]),
  ]
}

/** (a) A pass stays a pass or becomes undecided, a fail stays a fail or becomes undecided, undecided stays. */
function demandsFlipped(key: string, was: Told, is: Told): readonly string[] {
  if (is.verdict === 'broken') return [`${key} broke`]
  return [...was.demands].flatMap(([id, old]) => {
    const now = is.demands.get(id)
    if (now === undefined || now.verdict === 'undecided') return []
    if (!old.binding && (old.assumed || now.assumed)) return []
    const side = (verdict: string): string => (verdict === 'not-applicable' ? 'pass' : verdict)
    return side(old.verdict) === side(now.verdict) ? [] : [`${key}, demand ${id}: ${old.verdict} became ${now.verdict}`]
  })
}

/** (b) What goes unlisted leaves its question at no lower severity. */
function unlisted(key: string, was: Told, after: Snapshot): readonly string[] {
  const worst = mostSevere(was)
  if (worst === undefined || usesAssumed(was)) return []
  const questions = [...after.verdicts.values()].filter(
    (one) => one.rule === was.rule && one.kind === was.kind && one.subject.includes('one more'),
  )
  const asked = questions.some(
    (one) => one.verdict === 'undecided' && one.severity !== undefined && !isWorse(worst, one.severity),
  )
  return asked ? [] : [`${key} went unlisted with ${was.verdict} at ${worst} and left no question as severe`]
}

/** (c) A failing severity only gets milder. */
function severityGrew(key: string, was: Told, is: Told): readonly string[] {
  if (was.verdict !== 'fail' || is.verdict !== 'fail' || was.severity === undefined || is.severity === undefined)
    return []
  return isWorse(is.severity, was.severity) ? [`${key}: fails at ${is.severity} after, ${was.severity} before`] : []
}

/** (c) ... and never above what `couldBe` said: the worst that a verdict allows for does not shrink. */
function promiseBroken(key: string, was: Told, is: Told): readonly string[] {
  const [before, after] = [mostSevere(was), mostSevere(is)]
  if (before === undefined) return []
  return after === undefined || isWorse(before, after)
    ? [`${key}: could be ${before} before, only ${after ?? 'nothing'} after`]
    : []
}

function mostSevere({ verdict, severity, couldBe }: Told): Severity | undefined {
  if (verdict !== 'fail' && verdict !== 'undecided') return undefined
  return severities.find((one) => one === couldBe || one === severity)
}

function usesAssumed(told: Told): boolean {
  return [...told.demands.values()].some((one) => one.assumed)
}
