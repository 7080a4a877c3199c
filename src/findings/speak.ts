import type { JudgedDemand } from '../judging/index.js'
import { allLeaves, severities } from '../rulebook/index.js'
import type { UnitSystem } from '../units/index.js'
import { marginOf } from './tell-evidence.js'

/** The demand that a finding is about: the worst of those with its verdict, among equals the one missed by most. */
export function speaking(
  demands: readonly JudgedDemand[],
  verdict: 'fail' | 'undecided',
  system: UnitSystem,
): JudgedDemand | undefined {
  const candidates = demands.filter((one) => one.verdict === verdict)
  return [...candidates].sort(
    (a, b) => rank(a) - rank(b) || missedBy(a, system) - missedBy(b, system) || (a.demand.id < b.demand.id ? -1 : 1),
  )[0]
}

function rank({ demand }: JudgedDemand): number {
  return severities.indexOf(demand.severity)
}

function missedBy({ require }: JudgedDemand, system: UnitSystem): number {
  const shares = allLeaves(require).map((leaf) => marginOf(leaf, system)?.share ?? 0)
  return Math.min(0, ...shares)
}
