import type { SizeLine, Sizes, TopicSizes } from '../checks/index.js'
import type { Missing } from '../facts/index.js'
import { printIn, printQuantity, type UnitSystem } from '../units/index.js'
import type { Item, Row, Section, Sheet } from './sheet.js'
import { stepText } from '../sizing/index.js'

/** A page of numbers, topic by topic, each with a working that can be followed with a pencil. */
export function sizesSheet({ name, units, topics, advisory }: Sizes): Sheet {
  return {
    title: name === undefined ? 'Sizes' : `Sizes: ${name}`,
    advisory,
    sections: topics.map((topic) => topicSection(topic, units)),
  }
}

function topicSection({ topic, lines }: TopicSizes, units: UnitSystem): Section {
  const open = lines.filter(({ state }) => state === 'open')
  const items = lines.flatMap((line) => itemsOf(line, units))
  return {
    heading: topic.replace('-', ' ').toUpperCase(),
    tone: 'plain',
    numbered: false,
    ...(lines.length === 0 ? { note: 'Nothing of it is listed.' } : {}),
    items: open.length === 0 ? items : [...items, openItem(open)],
  }
}

function itemsOf(line: SizeLine, units: UnitSystem): readonly Item[] {
  const aside = line.of === undefined ? {} : { aside: line.of }
  switch (line.state) {
    case 'sized':
      return [{ head: `${line.name}: ${amountOf(line, units)}`, ...aside, rows: rowsOf(line, units) }]
    case 'bounded':
      return [{ head: `${line.name}: ${boundsOf(line, units)}`, ...aside, rows: [missingRow(line.missing)] }]
    case 'told':
      return [{ head: `${line.name}: ${line.text}`, ...aside, rows: [] }]
    case 'impossible':
      return [{ head: line.name, ...aside, text: line.why, rows: [] }]
    case 'open':
      return []
    default:
      return neverLine(line)
  }
}

type SizedLine = SizeLine & { readonly state: 'sized' }

function amountOf({ value, quantity, in: unit }: SizedLine, units: UnitSystem): string {
  const special = quantity === 'volumeFlow' || quantity === 'pressure'
  return special && unit !== undefined && units === 'ip'
    ? printIn(value, quantity, unit, 2)
    : printQuantity(value, quantity, units)
}

function boundsOf({ low, high, quantity }: SizeLine & { readonly state: 'bounded' }, units: UnitSystem): string {
  const print = (value: number): string => printQuantity(value, quantity, units)
  if (high === Infinity) return `at least ${print(low)}`
  return low === -Infinity ? `at most ${print(high)}` : `${print(low)} to ${print(high)}`
}

function missingRow(missing: readonly Missing[]): Row {
  return { label: 'To know', text: addressesOf(missing) }
}

function addressesOf(missing: readonly Missing[]): string {
  return missing.map(({ subject, fact }) => `${subject}.${fact}`).join(', ')
}

function rowsOf({ working, assumed, valid }: SizedLine, units: UnitSystem): readonly Row[] {
  const steps = working.map((step) => stepText(step, units)).join('; ')
  return [
    ...(steps === '' ? [] : [{ label: 'Working', text: steps }]),
    ...(assumed.length === 0 ? [] : [{ label: 'Granted', text: [...new Set(assumed)].join('; ') }]),
    ...(valid ? [] : [{ label: 'Beware', text: 'an input lies outside the range for which the method is published' }]),
  ]
}

/** What is missing, told once for all lines that wait for the same. */
function openItem(lines: readonly SizeLine[]): Item {
  const waiting = new Map<string, string[]>()
  for (const line of lines) {
    const missing = line.state === 'open' ? addressesOf(line.missing) : ''
    waiting.set(missing, [
      ...(waiting.get(missing) ?? []),
      line.of === undefined ? line.name : `${line.name} (${line.of})`,
    ])
  }
  return {
    head: 'Cannot be worked out yet',
    rows: [...waiting].map(([missing, names]) => ({ label: 'Missing', text: `${missing}, for: ${names.join('; ')}` })),
  }
}

function neverLine(line: never): never {
  throw new TypeError(`no such line: ${String(line)}`)
}
