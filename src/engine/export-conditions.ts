import type { Facts } from '../facts/index.js'
import { judge, type JudgedDemand, type Verdict } from '../judging/index.js'
import type { Judged, Rulebook, Tri } from '../rulebook/index.js'
import { exportJudged, type StockConditions } from './export-judged.js'

/** One condition of one demand for one subject, written for an engine that knows nothing of ours. */
export interface ExportedCondition extends StockConditions {
  readonly rule: string
  readonly subject: string
  readonly demand: string
  readonly part: 'dates' | 'when' | 'require' | 'exempted'
  /** What it comes to here. */
  readonly truth: Tri
}

/**
 * Every condition that a rulebook asks of an installation, as trees that an untouched json-rules-engine can run with
 * `allowUndefinedFacts`. Fold its annotated result with {@link foldResult}: it comes to the same.
 */
export function exportConditions(rulebook: Rulebook, facts: Facts): readonly ExportedCondition[] {
  return judge(rulebook, facts).flatMap(exportVerdict)
}

function exportVerdict(verdict: Verdict): readonly ExportedCondition[] {
  if (verdict.type === 'broken') return []
  const { rule, subject } = verdict
  return verdict.demands.flatMap((judged) =>
    partsOf(judged).map(([part, condition]) => ({
      rule: rule.id,
      subject: subject.id,
      demand: judged.demand.id,
      part,
      truth: condition.truth,
      ...exportJudged(condition),
    })),
  )
}

function partsOf({
  dates,
  when,
  require,
  exempted,
}: JudgedDemand): readonly (readonly [ExportedCondition['part'], Judged])[] {
  const parts = [
    ['dates', dates],
    ['when', when],
    ['require', require],
    ['exempted', exempted?.judged],
  ] as const
  return parts.flatMap(([part, judged]) => (judged === undefined || isEmpty(judged) ? [] : [[part, judged] as const]))
}

/** An exemption without conditions is an empty group, which no engine reads alike. */
function isEmpty(judged: Judged): boolean {
  return judged.type !== 'leaf' && judged.of.length === 0
}
