import { leavesOf, type KindSpec, type LeafField, type Medium, type Way } from '../../model/index.js'
import type { Rulebook } from '../../rulebook/index.js'
import { meaningOf, type Meanings } from '../meanings.js'
import { capital, code, table } from './markdown.js'
import { spokenName, typeWords } from './type-words.js'

/** One kind of thing: heading, meaning, how it is joined, and a table of all that can be said of it. */
export function kindBlocks(
  kind: KindSpec,
  rulebook: Rulebook,
  meanings: Meanings,
): readonly (string | readonly string[])[] {
  const meaning = meaningOf(rulebook.model, kind.name, '', meanings) ?? ''
  return [
    `### ${kind.name}`,
    `${capital(kind.spoken)}. ${meaning}`,
    notes(kind, rulebook),
    table(['field', 'written as', 'meaning'], fieldRows(kind, rulebook, meanings)),
    ...Object.entries(kind.parts).flatMap(([list, part]) => partBlocks(list, part, rulebook, meanings)),
  ]
}

function partBlocks(
  list: string,
  part: KindSpec,
  rulebook: Rulebook,
  meanings: Meanings,
): readonly (string | readonly string[])[] {
  const meaning = meaningOf(rulebook.model, part.name, '', meanings) ?? ''
  const intro = `Parts under ${code(list)}, each with an \`id\`: \`${list}: { complete: 1, list: [{ id: ..., ... }] }\`. Kind ${code(part.name)}. ${meaning}`
  return [intro, table(['field of the part', 'written as', 'meaning'], fieldRows(part, rulebook, meanings))]
}

function fieldRows(kind: KindSpec, { model, facts }: Rulebook, meanings: Meanings): readonly (readonly string[])[] {
  const rowOf = (name: string, type: LeafField, mark: string): readonly string[] => [
    code(name),
    typeWords(type, model),
    `${meaningOf(model, kind.name, name, meanings) ?? ''}${mark}`,
  ]
  const fields = [...leavesOf(kind.fields)].map(([name, type]) => rowOf(name, type, ''))
  const answers = [...(model.answers.get(kind.name) ?? [])].map(([name, type]) =>
    rowOf(name, type, ' *An answer: found from the drawing where there is one.*'),
  )
  const found = facts.handles.filter(
    (handle) => !handle.answerable && (model.kindsIn.get(handle.of) ?? []).includes(kind.name),
  )
  const derived = found.map(({ name, type }) => rowOf(name, type, ' *Found from the document; it is not written.*'))
  return [...fields, ...answers, ...derived]
}

const mediumWords: Readonly<Record<Medium, string>> = {
  heatingWater: 'heating water',
  eitherWater: 'heating or drinking water',
  potableCold: 'cold drinking water',
  potableHot: 'hot drinking water',
  discharge: 'discharge',
  condensate: 'condensate',
  gas: 'gas',
  flueGas: 'flue gas',
  combustionAir: 'combustion air',
}

function notes(kind: KindSpec, { model }: Rulebook): readonly string[] {
  const ports = Object.entries(kind.ports).map(([port, medium]) => `${code(port)} (${mediumWords[medium]})`)
  const counted = (model.inverse.get(kind.name) ?? []).map(
    (one) => `${code(one.countedAs)} (each ${spokenName(one.kind, model)} by its ${code(one.field)})`,
  )
  return [
    ...note(
      'Families',
      kind.families.map((family) => `${code(family.name)} (${family.spoken})`),
    ),
    ...note('Ports', ports),
    ...(kind.portsCountedBy === undefined
      ? []
      : [`- \`*\` stands for numbers from 1, as many as ${code(kind.portsCountedBy)} says.`]),
    ...(kind.through === undefined
      ? []
      : [`- Inside a path its bare id takes the way from ${code(kind.through[0])} to ${code(kind.through[1])}.`]),
    ...kind.ways.flatMap(wayNote),
    ...(kind.draws === undefined
      ? []
      : [`- It draws power ${kind.draws === 'steady' ? 'all the time' : 'only in control states that energize it'}.`]),
    ...note('Counted here', counted),
  ]
}

function note(title: string, words: readonly string[]): readonly string[] {
  return words.length === 0 ? [] : [`- ${title}: ${words.join(', ')}.`]
}

function wayNote({ between: [from, to], closes, checks, restricts }: Way): readonly string[] {
  const closing =
    closes === 'never'
      ? []
      : [closes === 'always' ? 'can be shut' : `can be shut, unless ${code(closes.unless)} is ${closes.is}`]
  const checking =
    checks === undefined || checks === false
      ? []
      : [checks === true ? 'lets nothing back' : `lets nothing back where ${code(checks.when)} is ${checks.is}`]
  const said = [...closing, ...checking, ...(restricts === true ? ['holds back what passes'] : [])]
  return said.length === 0 ? [] : [`- The way between ${code(from)} and ${code(to)} ${said.join(', and ')}.`]
}
