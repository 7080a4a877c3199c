import type { Condition } from './condition.js'
import type { Authority, Demand, Effective, Exemption, Rule } from './rule.js'

/** An authority's file, compiled against the rules it speaks of. */
export interface Overlay {
  readonly id: string
  readonly authority: Authority
  readonly demands: readonly { readonly rule: string; readonly demand: Demand }[]
  readonly exemptions: readonly {
    readonly rule: string
    readonly of?: readonly string[]
    readonly exemption: Exemption
  }[]
  readonly added: readonly Rule[]
}

/** Joins conditions that must all hold; none is no condition at all. */
export function allOf(conditions: readonly (Condition | undefined)[]): Condition | undefined {
  const given = conditions.filter((condition) => condition !== undefined)
  return given.length < 2 ? given[0] : { type: 'all', of: given }
}

/** The dates of a change as a condition on the subject, `[from, until)`. */
export function effectiveCondition(effective: Effective | undefined, subject: string): unknown {
  if (effective === undefined) return undefined
  const date = effective.by === 'applicationDate' ? 'jurisdiction.applicationDate' : `${subject}.installedOn`
  const ends = [
    ...(effective.from === undefined ? [] : [{ [date]: { atLeast: effective.from } }]),
    ...(effective.until === undefined ? [] : [{ [date]: { lessThan: effective.until } }]),
  ]
  return ends.length === 1 ? ends[0] : { all: ends }
}

/** Rules with the demands and exemptions that overlays lay on them. The order of overlays does not matter. */
export function layOver(rules: readonly Rule[], overlays: readonly Overlay[]): readonly Rule[] {
  const sorted = [...overlays].sort((a, b) => (a.id < b.id ? -1 : 1))
  return [...rules, ...sorted.flatMap((overlay) => overlay.added)].map((rule) => {
    const more = sorted.flatMap((overlay) =>
      overlay.demands.filter((change) => change.rule === rule.id).map((change) => change.demand),
    )
    const exemptions = sorted.flatMap((overlay) => overlay.exemptions.filter((change) => change.rule === rule.id))
    const demands = [...rule.demands, ...more].map((demand) => exempt(demand, exemptions))
    return more.length === 0 && exemptions.length === 0 ? rule : Object.freeze({ ...rule, demands })
  })
}

/** An exemption reaches base demands and its authority's own, never locked ones and never another authority's. */
function exempt(demand: Demand, exemptions: Overlay['exemptions']): Demand {
  const fitting = exemptions.filter(({ of, exemption }) => {
    const within = demand.authority.layer === 'base' || demand.authority.id === exemption.authority.id
    return within && !demand.locked && (of === undefined || of.includes(demand.id))
  })
  return fitting.length === 0
    ? demand
    : Object.freeze({ ...demand, exemptions: [...demand.exemptions, ...fitting.map(({ exemption }) => exemption)] })
}
