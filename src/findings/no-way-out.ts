import type { JudgedDemand } from '../judging/index.js'
import { allLeaves, type JudgedLeaf } from '../rulebook/index.js'

/** When the lists that apply share no member, nothing satisfies them all; the reader is told rather than sent round. */
export function noWayOut(demands: readonly JudgedDemand[]): string | undefined {
  const applying = demands.filter((one) => one.verdict === 'fail' || one.verdict === 'pass')
  const lists = applying.flatMap((one) => allLeaves(one.require)).filter(isCompleteList)
  const facts = new Set(lists.map((leaf) => leaf.leaf.fact.path))
  const stuck = [...facts].find((path) => sharesNothing(lists.filter((leaf) => leaf.leaf.fact.path === path)))
  return stuck === undefined
    ? undefined
    : 'No choice satisfies all who demand here; ask the maker and the office together.'
}

function isCompleteList(leaf: JudgedLeaf): boolean {
  return leaf.leaf.operator === 'oneOf' && leaf.right[0]?.state === 'list' && leaf.right[0].complete
}

function sharesNothing(leaves: readonly JudgedLeaf[]): boolean {
  const lists = leaves.map(({ right }) => (right[0]?.state === 'list' ? right[0].members : []))
  const [first = [], ...others] = lists
  return others.length > 0 && !first.some((member) => others.every((list) => list.includes(member)))
}
