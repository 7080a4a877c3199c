import {
  everyComponent,
  everyLine,
  leavesOf,
  places,
  type KindSpec,
  type Place,
  type Section,
} from '../../model/index.js'
import type { Rulebook } from '../../rulebook/index.js'
import type { Meanings } from '../meanings.js'
import { kindBlocks } from './kind-blocks.js'
import { code, page, table, writtenBy } from './markdown.js'
import { typeWords } from './type-words.js'

const placeTitles: Readonly<Record<Place, string>> = {
  gas: 'Gas',
  vent: 'Vent',
  boiler: 'Boiler and heating piping',
  relief: 'Relief',
  fill: 'Fill',
  expansion: 'Expansion',
  hotWater: 'Hot water',
  condensate: 'Condensate',
  electrical: 'Electrical',
  alarms: 'Alarms',
  papers: 'Papers',
}

/** The reference of the whole model: every kind with its meaning, families, ports, fields, answers and parts. */
export function modelPage(rulebook: Rulebook, meanings: Meanings): string {
  const kinds = [...rulebook.model.kinds.values()]
  const told = (section: Section): readonly KindSpec[] => kinds.filter((kind) => kind.section === section)
  const blocks = (list: readonly KindSpec[]): readonly (string | readonly string[])[] =>
    list.flatMap((kind) => kindBlocks(kind, rulebook, meanings))
  const around = told('singleton').filter((kind) => Object.keys(kind.fields).length > 0)
  const others = kinds.filter((kind) => !['components', 'singleton', 'parts'].includes(kind.section))
  return page([
    '# What an installation is made of',
    intro,
    '## Contents',
    contents([...around, ...told('components'), ...others]),
    '## The house and its papers',
    'Each is a section of its own at the top of the document: `site: { altitude: 310 ft }`.',
    ...blocks(around),
    '## Components',
    'Written under `components`, each with an `id` and a `kind`. Every component may also say:',
    sharedTable('components', everyComponent, rulebook, meanings),
    ...places.flatMap((place) => {
      const here = told('components').filter((kind) => kind.place === place)
      return here.length === 0 ? [] : [`## ${placeTitles[place]}`, ...blocks(here)]
    }),
    '## Other sections',
    'Each has a list of its own in the document; no `kind` is written. Every line may also say:',
    sharedTable('lines', everyLine, rulebook, meanings),
    ...blocks(others),
    writtenBy('the field table in `src/model`'),
  ])
}

const intro = `A document lists things; each thing has fields, and a field that is left out, or says \`unknown\`, is a question and never
a pass. A value is written plainly (\`30 psi\`) or in its long form, \`{ value: 30 psi, how: gauge, at: 2025-09-12, evidence: [P1] }\`.
The long form also takes \`standing: assumed\` or \`template\`, \`by\`, \`because\`, and \`within\` for amounts that stand in for a
calculation. Numbers carry their unit; the units shown are examples, and any unit of the same kind is read.`

function contents(kinds: readonly KindSpec[]): readonly string[] {
  return [kinds.map((kind) => `[${kind.name}](#${kind.name.toLowerCase()})`).join(' · ')]
}

function sharedTable(
  section: Section,
  fields: typeof everyComponent | typeof everyLine,
  rulebook: Rulebook,
  meanings: Meanings,
): readonly string[] {
  const rows = [...leavesOf(fields)].map(([name, type]) => [
    code(name),
    typeWords(type, rulebook.model),
    meanings[section]?.[name] ?? '',
  ])
  return table(['field', 'written as', 'meaning'], rows)
}
