import type { Thing } from '../model/index.js'
import type { Demand, Judged, Rule, Severity, Tri } from '../rulebook/index.js'

/** What a demand comes to for one subject. */
export type DemandVerdict = 'pass' | 'fail' | 'undecided' | 'not-applicable'

/** A judged demand with its evidence. */
export interface JudgedDemand {
  readonly demand: Demand
  readonly verdict: DemandVerdict
  /** Whether the authority is named and the dates fit. */
  readonly applies: Tri
  readonly when?: Judged
  readonly require: Judged
  readonly dates?: Judged
  /** The exemption that let it go, or that might. */
  readonly exempted?: { readonly index: number; readonly truth: Tri; readonly judged?: Judged }
}

/** What a rule comes to for one subject. A rule that threw is broken, never a verdict. */
export type Verdict =
  | {
      readonly type: 'judged'
      readonly rule: Rule
      readonly subject: Thing
      readonly verdict: DemandVerdict
      /** Of a fail: the worst that fails. Of an undecided: the worst that is undecided. */
      readonly severity?: Severity
      /** A worse demand is undecided beside the fail. */
      readonly couldBe?: Severity
      readonly demands: readonly JudgedDemand[]
    }
  | { readonly type: 'broken'; readonly rule: Rule; readonly subject: Thing; readonly error: string }
