import { assumption, type SizeLine, type Sizes, type TopicSizes } from '../checks/index.js'
import type { Missing } from '../facts/index.js'
import { printQuantity, type UnitSystem } from '../units/index.js'
import type { Item, Row, Section, Sheet } from './sheet.js'
import { printReadAs, reasonText, stepText } from '../sizing/index.js'
import { firstGranted, foldedSteps, nothingTold, type Told } from './folded-working.js'

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
  const page: Page = { units, told: nothingTold() }
  const items = lines.flatMap((line) => itemsOf(line, page))
  return {
    heading: topic.replace('-', ' ').toUpperCase(),
    tone: 'plain',
    numbered: false,
    ...(lines.length === 0 ? { note: 'Nothing of it is listed.' } : {}),
    items: open.length === 0 ? items : [...items, openItem(open)],
  }
}

interface Page {
  readonly units: UnitSystem
  readonly told: Told
}

function itemsOf(line: SizeLine, page: Page): readonly Item[] {
  const { units } = page
  const aside = line.of === undefined ? {} : { aside: line.of }
  switch (line.state) {
    case 'sized':
      return [{ head: `${line.name}: ${amountOf(line, units)}`, ...aside, rows: rowsOf(line, page) }]
    case 'bounded':
      return [{ head: `${line.name}: ${boundsOf(line, units)}`, ...aside, rows: boundRows(line, page) }]
    case 'told':
      return [{ head: `${line.name}: ${line.text}`, ...aside, rows: [] }]
    case 'impossible':
      return [{ head: line.name, ...aside, text: reasonText(line.why, units), rows: [] }]
    case 'open':
      return []
    default:
      return neverLine(line)
  }
}

type SizedLine = SizeLine & { readonly state: 'sized' }

function amountOf({ value, quantity, readAs }: SizedLine, units: UnitSystem): string {
  return readAs === undefined ? printQuantity(value, quantity, units) : printReadAs(value, readAs, units)
}

function boundsOf({ low, high, quantity }: SizeLine & { readonly state: 'bounded' }, units: UnitSystem): string {
  const print = (value: number): string => printQuantity(value, quantity, units)
  if (high === Infinity) return `at least ${print(low)}`
  return low === -Infinity ? `at most ${print(high)}` : `${print(low)} to ${print(high)}`
}

function boundRows({ missing, assumed = [] }: SizeLine & { readonly state: 'bounded' }, page: Page): readonly Row[] {
  return [...grantedRows(assumed, page), ...(missing.length === 0 ? [] : [missingRow(missing)])]
}

function missingRow(missing: readonly Missing[]): Row {
  return { label: 'To know', text: addressesOf(missing) }
}

function addressesOf(missing: readonly Missing[]): string {
  return missing.map(({ subject, fact }) => `${subject}.${fact}`).join(', ')
}

function rowsOf(line: SizedLine, page: Page): readonly Row[] {
  const { working, assumed, valid } = line
  const folded = foldedSteps(
    working.map((step) => stepText(step, page.units)),
    page.told,
  )
  const steps = folded.length < working.length ? withoutHead(folded, amountOf(line, page.units)) : folded
  return [
    ...(steps.length === 0 ? [] : [{ label: 'Working', text: steps.join('; ') }]),
    ...grantedRows(assumed, page),
    ...(valid ? [] : [{ label: 'Beware', text: 'an input lies outside the range for which the method is published' }]),
  ]
}

/** Where the rest is told already, the number of the head need not stand again at the end. */
function withoutHead(steps: readonly string[], head: string): readonly string[] {
  return steps.length > 1 && steps.at(-1)?.endsWith(`: ${head}`) === true ? steps.slice(0, -1) : steps
}

/** What is granted is told once in a topic; that a line rests on an assumption is told each time. */
function grantedRows(assumed: readonly string[], { told }: Page): readonly Row[] {
  const granted = firstGranted(
    assumed.filter((one) => one !== assumption),
    told,
  )
  return [
    ...(granted.length === 0 ? [] : [{ label: 'Granted', text: granted.join('; ') }]),
    ...(assumed.includes(assumption) ? [{ label: 'Rests on', text: assumption }] : []),
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
