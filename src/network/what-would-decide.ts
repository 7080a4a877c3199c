import { blocks } from './barriers.js'
import type { PortGraph } from './port-graph.js'
import { isTargetAt, type IsTarget, type Search } from './search.js'
import { uniqueFacts, type MissingFact } from './told.js'
import { walk, type Walk } from './walk.js'

/** Facts that would decide, and what it cost to find them. */
export interface Deciding {
  readonly missing: readonly MissingFact[]
  readonly visited: number
}

/**
 * The first open questions on the ways that may lead to a target: those that border on what is surely reached and behind
 * which a target may lie. Open questions that no target lies behind decide nothing and are left out.
 */
export function whatWouldDecide(graph: PortGraph, sure: Walk, isTarget: IsTarget, search: Search): Deciding {
  const isOutside = (name: string): boolean => !sure.reached.has(name)
  const mayBeTarget = (name: string): boolean => {
    const node = graph.node(name)
    return node !== undefined && isTargetAt(node, isTarget, search) !== false
  }
  const perhaps = walk(graph, [...sure.reached.keys()], { passable: (passage) => blocks(passage, search) !== true })
  const targets = [...perhaps.reached.keys()].filter((name) => isOutside(name) && mayBeTarget(name))
  const passable: Parameters<typeof walk>[2]['passable'] = (passage, to) =>
    isOutside(to) && blocks(passage, search) !== true
  const behind = walk(graph, targets, { passable })
  const border = openQuestions(graph, sure, search, (to) => behind.reached.has(to))
  const missing = uniqueFacts([...untoldTargets(graph, sure, isTarget), ...border.missing])
  return { missing, visited: perhaps.visited + behind.visited + border.visited }
}

/** The open questions between what is surely reached and what lies outside of it. */
export function openQuestions(graph: PortGraph, sure: Walk, search: Search, counts: (to: string) => boolean): Deciding {
  const links = [...sure.reached.keys()].flatMap((name) => graph.linksAt(name))
  const leading = links.filter(({ to }) => !sure.reached.has(to) && counts(to))
  const missing = leading.map(({ passage }) => blocks(passage, search)).filter((told) => typeof told === 'object')
  return { missing, visited: links.length }
}

function untoldTargets(graph: PortGraph, sure: Walk, isTarget: IsTarget): readonly MissingFact[] {
  return [...sure.reached.keys()].flatMap((name) => {
    const node = graph.node(name)
    const told = node?.component === undefined ? false : isTarget(node.component, node.port)
    return typeof told === 'object' ? [told] : []
  })
}
