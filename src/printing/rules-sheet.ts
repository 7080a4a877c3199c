import { worstOf, type Rule } from '../rulebook/index.js'
import type { Section, Sheet } from './sheet.js'
import { counted } from './spoken-words.js'

/** One rule in a list. */
export interface RuleLine {
  readonly id: string
  readonly title: string
  readonly topic: string
  /** The worst of its demands; a rule without one waits for a town to adopt it. */
  readonly severity: string
  readonly subject: string
  readonly from: string
  readonly by: readonly string[]
}

/** The topic of a rule: what stands before the last slash of its id. */
export function topicOf(id: string): string {
  return id.slice(0, Math.max(0, id.lastIndexOf('/')))
}

/** Rules by their ids, with what a list tells of each. */
export function ruleLines(rules: readonly Rule[]): readonly RuleLine[] {
  const sorted = [...rules].sort((a, b) => (a.id < b.id ? -1 : 1))
  return sorted.map(({ id, title, subject, from, demands }) => ({
    id,
    title,
    topic: topicOf(id),
    severity: worstOf(demands.map((demand) => demand.severity)) ?? 'for towns to adopt',
    subject,
    from,
    by: [...new Set(demands.map((demand) => demand.authority.id))],
  }))
}

/** A page that lists rules by topic. */
export function rulesSheet(lines: readonly RuleLine[]): Sheet {
  const topics = [...new Set(lines.map(({ topic }) => topic))]
  return {
    title: counted(lines.length, 'rule', 'rules'),
    sections: topics.map((topic) =>
      topicSection(
        topic,
        lines.filter((line) => line.topic === topic),
      ),
    ),
  }
}

function topicSection(topic: string, lines: readonly RuleLine[]): Section {
  return {
    heading: `${topic} (${lines.length})`,
    tone: 'plain',
    numbered: false,
    items: lines.map(({ id, title, severity, subject, from, by }) => ({
      head: id,
      aside: `${severity}; ${subject}; from ${from}`,
      text: title,
      rows: by.every((name) => name === 'base') ? [] : [{ label: 'By', text: by.join(', ') }],
    })),
  }
}
