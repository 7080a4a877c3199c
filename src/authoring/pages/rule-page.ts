import { advisory } from '../../findings/index.js'
import { isMap, problemList, textOf } from '../../model/index.js'
import type { BasisData, Demand, Rule, Rulebook } from '../../rulebook/index.js'
import { printExpected, readExamples, type Example, type WrittenRule } from '../examples/index.js'
import type { Meanings } from '../meanings.js'
import { conditionWords } from './condition-words.js'
import { factRows } from './fact-rows.js'
import { capital, code, page, table, writtenBy } from './markdown.js'
import { spokenName } from './type-words.js'

/** The page of one rule: what it asks of whom, on what ground, why, and its examples. */
export function rulePage({ id, data }: WrittenRule, rule: Rule, rulebook: Rulebook, meanings: Meanings): string {
  const given = isMap(data) && isMap(data.given) ? data.given : {}
  return page([
    `# ${rule.title}`,
    `${code(id)}, asked of every **${spokenName(rule.subject, rulebook.model)}** from the **${rule.from}** phase on.`,
    rule.when === undefined ? '' : `It applies where ${conditionWords(rule.when)}.`,
    '## What is demanded',
    rule.demands.length === 0 ? 'Nothing by itself: authorities may adopt it.' : '',
    table(
      ['demand', 'severity', 'what', 'ground', 'source'],
      rule.demands.map((demand) => demandRow(demand, rulebook)),
    ),
    readingHelp(rule),
    '## Why',
    rule.because,
    ...section('Remedy', rule.remedy),
    ...section('Caution', rule.caution),
    '## What it asks',
    table(['fact', 'what it is', 'written as'], factRows(rule, rulebook, meanings)),
    '## Examples',
    givenText(given),
    table(
      ['example', 'what is known', 'verdict'],
      readExamples(data, problemList()).map((example) => exampleRow(example, given)),
    ),
    '---',
    `${advisory} Sections are cited and told in our own words.`,
    writtenBy(`[rules/${id}.yaml](../../../rules/${id}.yaml)`),
  ])
}

function section(title: string, text: string | undefined): readonly string[] {
  return text === undefined ? [] : [`## ${title}`, text]
}

function demandRow(
  { id, severity, locked, proof, when, require, basis }: Demand,
  rulebook: Rulebook,
): readonly string[] {
  const condition = when === undefined ? '' : `; only where ${conditionWords(when)}`
  const photo = proof === undefined ? '' : ', shown by a photo'
  const grounds = [...new Set(basis.map((one) => one.ground))]
  return [
    code(id),
    `${severity}${locked ? ', locked' : ''}`,
    `${conditionWords(require)}${photo}${condition}`,
    grounds.join(', '),
    basis.map((one) => basisText(one, rulebook)).join('<br>'),
  ]
}

function basisText({ source, clause, edition, known }: BasisData, rulebook: Rulebook): string {
  const title = rulebook.sources.get(source)?.title ?? source
  const place = [clause, edition === undefined ? undefined : `edition ${edition}`]
    .filter((part) => part !== undefined)
    .join(', ')
  return `${title}${place === '' ? '' : `: ${place}`} (${known === 'read' ? 'text read' : 'from memory'})`
}

function readingHelp({ demands }: Rule): string {
  const locked = demands.some((demand) => demand.locked) ? ['Nobody can exempt from a locked demand.'] : []
  const several = demands.length > 1 ? ['Each demand is judged by itself; the worst that fails speaks.'] : []
  return [...several, ...locked].join(' ')
}

function givenText(given: Readonly<Record<string, unknown>>): string {
  const facts = Object.entries(given).map(([path, value]) => `${code(path)} ${writtenText(value)}`)
  return facts.length === 0 ? '' : `Unless an example says otherwise: ${facts.join('; ')}.`
}

function exampleRow(example: Example, given: Readonly<Record<string, unknown>>): readonly string[] {
  if (example.type === 'fragment') return [capital(example.name), changesText(example), printExpected(example.expect)]
  const own = Object.entries(example.facts).filter(([path, value]) => given[path] !== value)
  return [capital(example.name), knownText(Object.fromEntries(own)), printExpected(example.expect)]
}

function knownText(facts: Readonly<Record<string, unknown>>): string {
  return (
    Object.entries(facts)
      .map(([path, value]) => `${code(path)} ${writtenText(value)}`)
      .join('<br>') || 'nothing more'
  )
}

function changesText({ of, edits }: Example & { readonly type: 'fragment' }): string {
  return [code(of), ...edits.map((edit) => code(JSON.stringify(edit)))].join('<br>')
}

function writtenText(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((one) => textOf(one) ?? '').join(', ')}]`
  if (typeof value !== 'object' || value === null) return textOf(value) ?? ''
  const { value: inner, ...about } = { value: '', ...value }
  return `${writtenText(inner)} (${Object.entries(about)
    .map(([key, said]) => `${key} ${writtenText(said)}`)
    .join(', ')})`
}
