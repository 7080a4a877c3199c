import type { Catalogue } from '../facts/index.js'
import { isMap, nearestIn, textOf, type ProblemList, type Steps } from '../model/index.js'
import { parseQuantity } from '../units/index.js'
import type { Condition } from './condition.js'
import { allOf, effectiveCondition, type Overlay } from './overlay.js'
import { readCondition } from './read-condition.js'
import { valueReading } from './read-rule.js'
import type { EffectiveData, OverlayData, RuleData, SourceData } from './rule-data.js'
import type { Authority, Effective, Rule } from './rule.js'
import type { ValueReading } from './value.js'

export interface OverlayReading {
  readonly catalogue: Catalogue
  readonly sources: ReadonlyMap<string, SourceData>
  readonly rules: ReadonlyMap<string, Rule>
  /** Rule data as written, for the measure of a rule. */
  readonly data: ReadonlyMap<string, unknown>
  readonly file: string
}

export interface Compiling extends OverlayReading {
  readonly problems: ProblemList
  readonly warnings: ProblemList
}

export interface Found {
  readonly demands: Overlay['demands'][number][]
  readonly exemptions: Overlay['exemptions'][number][]
  readonly added: Rule[]
}

/** One change of an overlay on its way into the rulebook. */
export interface Change {
  readonly data: OverlayData
  readonly authority: Authority
  readonly found: Found
  readonly steps: Steps
  readonly compiling: Compiling
}

/** The rule that a change speaks of. */
export interface Target {
  readonly rule: Rule
  readonly ruleData: Pick<RuleData, 'measure'>
  readonly values: ValueReading
}

export function targetOf(id: string, at: Steps, { compiling }: Change): Target | undefined {
  const rule = compiling.rules.get(id)
  if (rule === undefined)
    return compiling.problems.add('unknown-rule', at, `There is no rule "${id}".`, {
      received: id,
      ...nearestIn(id, compiling.rules.keys()),
    })
  const raw = compiling.data.get(id)
  const measure =
    isMap(raw) && isMap(raw.measure)
      ? { fact: textOf(raw.measure.fact) ?? '', operator: textOf(raw.measure.operator) ?? '' }
      : undefined
  return { rule, ruleData: { measure }, values: valueReading(rule.subject, compiling.catalogue, compiling.problems) }
}

export function effectiveOf({ from, until, by }: EffectiveData): Effective {
  return { by, ...(from === undefined ? {} : { from }), ...(until === undefined ? {} : { until }) }
}

/** The authority is named, and the dates fit. */
export function appliesOf(
  effective: EffectiveData | undefined,
  subject: string,
  change: Change,
  values: ValueReading,
): Condition | undefined {
  const { steps, compiling, authority } = change
  if (effective !== undefined) checkDates(effective, [...steps, 'effective'], compiling)
  const named = readCondition({ 'jurisdiction.authorities': { includes: authority.id } }, steps, values)
  const dates = effective === undefined ? undefined : effectiveCondition(effectiveOf(effective), subject)
  return allOf([named, dates === undefined ? undefined : readCondition(dates, [...steps, 'effective'], values)])
}

function checkDates({ from, until }: EffectiveData, steps: Steps, { problems, warnings }: Compiling): undefined {
  if (from === undefined && until === undefined)
    return problems.add('missing-key', steps, 'Dates have a beginning or an end.', { nearest: 'from' })
  const [start, end] = [from, until].map((day) => (day === undefined ? undefined : parseQuantity(day, 'date')))
  if (start?.ok === true && end?.ok === true && end.low <= start.low)
    warnings.add(
      'never-applies',
      steps,
      `From ${from ?? ''} until ${until ?? ''} there is no day; this change never applies.`,
    )
}
