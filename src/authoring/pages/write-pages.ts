import type { Rulebook } from '../../rulebook/index.js'
import type { WrittenRule } from '../examples/index.js'
import { builtInMeanings, type Meanings } from '../meanings.js'
import { modelPage } from './model-page.js'
import { ruleIndex } from './rule-index.js'
import { rulePage } from './rule-page.js'

/** What pages are written from. */
export interface PageSources {
  readonly rulebook: Rulebook
  /** The rules as written, for their examples. */
  readonly rules: readonly WrittenRule[]
  readonly meanings?: Meanings
}

/**
 * Writes the pages of a rule set: one for each rule, their index, and the reference of the model.
 *
 * @returns texts by path, from the project's root
 */
export function writePages({ rulebook, rules, meanings = builtInMeanings }: PageSources): ReadonlyMap<string, string> {
  const ordered = rules.toSorted((a, b) => (a.id < b.id ? -1 : 1))
  const known = ordered.flatMap((written) => {
    const rule = rulebook.rulesById.get(written.id)
    return rule === undefined ? [] : [{ written, rule }]
  })
  return new Map([
    ...known.map(
      ({ written, rule }) => [`docs/rules/${rule.id}.md`, rulePage(written, rule, rulebook, meanings)] as const,
    ),
    [
      'docs/rules/index.md',
      ruleIndex(
        known.map(({ rule }) => rule),
        rulebook,
      ),
    ],
    ['docs/reference/model.md', modelPage(rulebook, meanings)],
  ])
}
