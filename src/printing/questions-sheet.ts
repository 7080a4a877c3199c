import type { Report } from '../findings/index.js'
import { places, type Model, type Place } from '../model/index.js'
import { severities, type Rulebook } from '../rulebook/index.js'
import { howToCount } from './complete-section.js'
import type { Question } from './questions.js'
import type { Item, Section, Sheet } from './sheet.js'
import { counted, spokenPlaces } from './spoken-words.js'

/** Questions as a page: by place in the order of a walk round the house, each with its rank. */
export function questionsSheet(questions: readonly Question[], report: Report, rulebook: Rulebook): Sheet {
  const values = questions.filter(({ asks }) => asks === 'value')
  const binding = questions.filter(({ worst }) => worst === 'stop' || worst === 'must').length
  return {
    title: report.name ?? 'Installation without a name',
    about: `judged on ${report.provenance.judgedOn}`,
    headline: { text: headline(questions.length, binding), tone: binding > 0 ? 'open' : 'clear' },
    sections: [
      ...unheardSection(report),
      ...places.flatMap((place) =>
        placeSection(
          place,
          values.filter((one) => one.place === place),
          rulebook,
        ),
      ),
      ...countSection(
        questions.filter(({ asks }) => asks === 'count'),
        rulebook,
      ),
    ],
    advisory: 'The number before a question is its rank: what could stop firing first, then what decides most.',
  }
}

function headline(all: number, binding: number): string {
  return all === 0
    ? 'Nothing is left to find out for the rules that were asked.'
    : `${counted(all, 'thing', 'things')} to find out, ${binding} of them before anybody can say it is ready.`
}

function unheardSection({ unheard }: Report): readonly Section[] {
  return unheard.length === 0
    ? []
    : [
        {
          heading: 'WHO HAS A SAY',
          tone: 'must',
          numbered: false,
          items: unheard.map(({ message }) => ({ text: message, rows: [] })),
        },
      ]
}

function placeSection(place: Place, questions: readonly Question[], rulebook: Rulebook): readonly Section[] {
  if (questions.length === 0) return []
  return [
    {
      heading: `${spokenPlaces[place].toUpperCase()} (${questions.length})`,
      tone: 'open',
      numbered: false,
      items: alike(questions).map((group) => questionItem(group, rulebook)),
    },
  ]
}

/** The same question of several things is asked once. */
function alike(questions: readonly Question[]): readonly (readonly Question[])[] {
  const groups = new Map<string, Question[]>()
  for (const one of questions) {
    const key = `${one.worst} ${one.fact} ${one.rules.join()}`
    groups.set(key, [...(groups.get(key) ?? []), one])
  }
  return [...groups.values()]
}

function questionItem(group: readonly Question[], rulebook: Rulebook): Item {
  const [first] = group
  if (first === undefined) return { rows: [] }
  const name =
    group.length === 1
      ? `${first.subject}.${first.fact}`
      : `${first.fact} of ${group.map(({ subject }) => subject).join(', ')}`
  const [rule, ...others] = first.rules.map((id) => rulebook.rulesById.get(id)?.title ?? id)
  const more = others.length === 0 ? '' : ` and ${counted(others.length, 'more rule', 'more rules')}`
  return {
    head: `${first.rank}. ${name}${first.answer === undefined ? '' : `: ${first.answer}`}`,
    aside: first.worst,
    rows: [{ label: 'Decides', text: `${rule ?? ''}${more}` }],
  }
}

function countSection(questions: readonly Question[], { model }: Rulebook): readonly Section[] {
  if (questions.length === 0) return []
  const rows = severities.flatMap((severity) => {
    const names = questions
      .filter(({ worst }) => worst === severity)
      .map((question) => `${question.rank}. ${countWords(question, model)}`)
    return names.length === 0 ? [] : [{ label: severity, text: names.join(', '), tone: severity }]
  })
  return [
    {
      heading: `HOW MANY ARE THERE? (${questions.length})`,
      tone: 'open',
      numbered: false,
      note: 'Is there another of these, not listed?',
      items: [{ rows: [...rows, howToCount] }],
    },
  ]
}

function countWords({ subject, fact }: Question, { kinds }: Model): string {
  const name = fact === 'count' ? subject : fact.replace('count of ', '')
  const spoken = kinds.get(name)?.spoken ?? name
  return `${spoken === name ? name : `${spoken} (${name})`}${fact === 'count' ? '' : ` of ${subject}`}`
}
