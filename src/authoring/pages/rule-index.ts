import { severities, type Rule, type Rulebook } from '../../rulebook/index.js'
import { capital, page, table, writtenBy } from './markdown.js'
import { spokenName } from './type-words.js'

/** The index of all rules, by topic. */
export function ruleIndex(rules: readonly Rule[], rulebook: Rulebook): string {
  const topics = [...new Set(rules.map(topicOf))]
  return page([
    '# Rules',
    `${rules.length} rules in ${topics.length} topics. A rule is a list of demands; towns and other authorities lay theirs over these.`,
    ...topics.flatMap((topic) => [
      `## ${capital(topic.replaceAll('-', ' '))}`,
      topicTable(
        rules.filter((rule) => topicOf(rule) === topic),
        rulebook,
      ),
    ]),
    '## Severities',
    [
      '- **stop**: do not fire, do not test.',
      '- **must**: it does not stand up to the code, the listing, the instructions or physics.',
      '- **should**: good practice, or a figure that nobody has read in the text.',
      '- **advice**: worth a thought.',
    ],
    writtenBy('the files in [rules](../../rules)'),
  ])
}

function topicTable(rules: readonly Rule[], rulebook: Rulebook): readonly string[] {
  const rows = rules.map((rule) => {
    const used = severities.filter((severity) => rule.demands.some((demand) => demand.severity === severity))
    return [`[${rule.title}](${rule.id}.md)`, spokenName(rule.subject, rulebook.model), rule.from, used.join(', ')]
  })
  return table(['rule', 'asked of every', 'from', 'severities'], rows)
}

function topicOf({ id }: Rule): string {
  return id.slice(0, id.lastIndexOf('/'))
}
