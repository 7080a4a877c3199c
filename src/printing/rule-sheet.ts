import { spokenGrounds } from '../findings/index.js'
import type { BasisData, Demand, Effective, Exemption, Rule, Rulebook } from '../rulebook/index.js'
import { conditionWords } from './condition-words.js'
import { cautionRow, row } from './finding-item.js'
import type { Item, Section, Sheet } from './sheet.js'

/** A rule in words: whom it asks, what it demands, who says so and why. */
export function ruleSheet(rule: Rule, rulebook: Rulebook, more: readonly Section[] = []): Sheet {
  const rows = [
    row('Asked', `of each ${rule.subject}, from phase ${rule.from} on`),
    row('Applies', rule.when === undefined ? 'always' : `when ${conditionWords(rule.when)}`),
    row('Says', rule.say),
    row('Why', rule.because),
    row('Do', rule.remedy),
    cautionRow(rule.caution),
  ]
  return {
    title: rule.title,
    about: rule.id,
    sections: [
      {
        heading: 'THE RULE',
        tone: 'plain',
        numbered: false,
        items: [{ rows: rows.filter((one) => one !== undefined) }],
      },
      demandsSection(rule, rulebook),
      ...more,
    ],
  }
}

function demandsSection({ demands }: Rule, rulebook: Rulebook): Section {
  const note = demands.length === 0 ? { note: 'It demands nothing by itself: a town may adopt it.' } : {}
  return {
    heading: `DEMANDS (${demands.length})`,
    tone: 'plain',
    numbered: true,
    ...note,
    items: demands.map((demand) => demandItem(demand, rulebook)),
  }
}

function demandItem(demand: Demand, rulebook: Rulebook): Item {
  const { id, severity, authority, require, when, effective, exemptions, basis, because, proof, locked, nature } =
    demand
  const rows = [
    row('Demands', conditionWords(require)),
    row('When', when && conditionWords(when)),
    row('Since', effective && effectiveWords(effective)),
    row('Proof', proof && 'only values that a photo shows count'),
    ...basis.map((one) => row('Source', basisWords(one, rulebook))),
    row('Nature', nature?.replace('-', ' ')),
    row('Locked', locked ? 'nobody can exempt from it' : undefined),
    ...exemptions.map((one) => row('Exempt', exemptionWords(one))),
    row('Why', because),
  ]
  return {
    head: `${severity}, ${authority.name}${writerWords(demand)}`,
    aside: id,
    rows: rows.filter((one) => one !== undefined),
  }
}

export function writerWords({ authority }: Pick<Demand, 'authority'>): string {
  return authority.layer === 'base' || authority.official
    ? ''
    : ` (unofficial: written by ${authority.writtenBy ?? 'somebody else'})`
}

export function effectiveWords({ from, until, by }: Effective): string {
  const days = [
    from === undefined ? undefined : `from ${from}`,
    until === undefined ? undefined : `until ${until}`,
  ].filter((part) => part !== undefined)
  return `${days.join(' ')}, by ${by === 'applicationDate' ? 'the date of application' : 'the date of installation'}`
}

function basisWords({ source, clause, edition, ground, known }: BasisData, rulebook: Rulebook): string {
  const title = rulebook.sources.get(source)?.title ?? source
  const place = [title, edition === undefined ? undefined : `(${edition})`, clause]
    .filter((part) => part !== undefined)
    .join(' ')
  return `${place}; ${spokenGrounds[ground]}; ${known === 'read' ? 'read' : 'from memory, not read'}`
}

function exemptionWords({ authority, clause, when, because }: Exemption): string {
  const unofficial = authority.official ? '' : ' (unofficial: confirm with the office)'
  const cases = when === undefined ? '' : ` when ${conditionWords(when)}`
  return `by ${authority.name}, ${clause}${unofficial}${cases}${because === undefined ? '' : `: ${because}`}`
}
