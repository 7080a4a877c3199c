import type { Facts, View } from '../facts/index.js'
import type { Thing } from '../model/index.js'
import {
  both,
  isBinding,
  judgeCondition,
  opposite,
  type Demand,
  type Exemption,
  type Judged,
  type Rule,
  type Tri,
} from '../rulebook/index.js'
import type { JudgedDemand } from './verdict.js'

/** The view that a severity is judged in: what is stated for `stop` and `must`, assumptions included below. */
export function viewFor(facts: Facts, demand: Pick<Demand, 'severity'>): View {
  return isBinding(demand.severity) ? facts.strict : facts.whole
}

/** What is required is seen in the same view; where a photo is asked, only what a photo shows counts. */
function provedView(facts: Facts, demand: Demand): View {
  const view = viewFor(facts, demand)
  return demand.proof === undefined ? view : facts.photographed(view)
}

/** Judges one demand as the implication "when it applies, it is required". */
export function judgeDemand(facts: Facts, rule: Rule, demand: Demand, subject: Thing): JudgedDemand {
  const view = viewFor(facts, demand)
  const proved = provedView(facts, demand)
  const at = seenIn(view, subject)
  const dates = demand.applies && judgeCondition(demand.applies, view, at)
  const when = bothWhens(
    rule.when && judgeCondition(rule.when, view, at),
    demand.when && judgeCondition(demand.when, view, at),
  )
  const require = judgeCondition(demand.require, proved, proved === view ? at : seenIn(proved, subject))
  const exempted = demand.exemptions.length === 0 ? undefined : strongestExemption(demand, view, at)
  const applies = both([dates?.truth ?? 1, when?.truth ?? 1, opposite(exempted?.truth ?? -1)])
  const worded = wordFor(applies, require.truth)
  const verdict = subject.unlisted === true && worded === 'fail' ? 'undecided' : worded
  return withConditions({ demand, verdict, applies: dates?.truth ?? 1, require }, { when, dates, exempted })
}

type Conditions = Pick<JudgedDemand, 'when' | 'dates' | 'exempted'>

function withConditions(
  judged: JudgedDemand,
  { when, dates, exempted }: { readonly [K in keyof Conditions]: Conditions[K] | undefined },
): JudgedDemand {
  if (when === undefined && dates === undefined && exempted === undefined) return judged
  return {
    ...judged,
    ...(when === undefined ? {} : { when }),
    ...(dates === undefined ? {} : { dates }),
    ...(exempted === undefined ? {} : { exempted }),
  }
}

function bothWhens(ofRule: Judged | undefined, own: Judged | undefined): Judged | undefined {
  if (ofRule === undefined || own === undefined) return ofRule ?? own
  return { type: 'all', truth: both([ofRule.truth, own.truth]), of: [ofRule, own] }
}

/** The same thing as a view holds it. */
function seenIn(view: View, subject: Thing): Thing {
  return view.installation.things.get(subject.id) ?? subject
}

function wordFor(applies: Tri, required: Tri): JudgedDemand['verdict'] {
  if (applies === -1) return 'not-applicable'
  if (required === 1) return 'pass'
  return applies === 1 && required === -1 ? 'fail' : 'undecided'
}

function strongestExemption(demand: Demand, view: View, subject: Thing): JudgedDemand['exempted'] {
  const judged = demand.exemptions.map((exemption, index) =>
    judgeExemption(demand, exemption, { index, view, subject }),
  )
  return judged.reduce<JudgedDemand['exempted']>(
    (best, one) => (best === undefined || one.truth > best.truth ? one : best),
    undefined,
  )
}

interface ExemptionPlace {
  readonly index: number
  readonly view: View
  readonly subject: Thing
}

/** Whoever is not the authority cannot let a binding demand go: the office has to confirm it. */
function judgeExemption(
  demand: Demand,
  exemption: Exemption,
  { index, view, subject }: ExemptionPlace,
): NonNullable<JudgedDemand['exempted']> {
  const parts = [exemption.applies, exemption.when].flatMap((condition) =>
    condition === undefined ? [] : [judgeCondition(condition, view, subject)],
  )
  const judged: Judged = { type: 'all', truth: both(parts.map((part) => part.truth)), of: parts }
  const limit: Tri = exemption.authority.official || !isBinding(demand.severity) ? 1 : 0
  return { index, truth: both([judged.truth, limit]), judged }
}
