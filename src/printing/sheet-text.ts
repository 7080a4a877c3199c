import { plainPaint, type Paint } from './paint.js'
import type { Item, Row, Section, Sheet } from './sheet.js'
import { oneLine, wrap } from './wrap.js'

/** Width of a page, and its colors. */
export interface PageOptions {
  /** Columns of a line; 80 when left out, at least 40. */
  readonly width?: number
  /** Colors by tone, for terminals; none when left out. */
  readonly color?: Paint
}

interface Page {
  readonly width: number
  readonly paint: Paint
}

/** Prints a page as plain text that ends with a line break; no line is longer than the width. */
export function sheetText(sheet: Sheet, { width = 80, color = plainPaint }: PageOptions = {}): string {
  const page: Page = { width: Math.max(narrowest, width), paint: color }
  const { about = '', headline, caution, sections, advisory } = sheet
  const lines = [
    ...twoEnds(sheet.title, about, page).map((line) => color.heading(line)),
    ...lineOf(headline?.text, page).map((line) => color[headline?.tone ?? 'plain'](line)),
    ...lineOf(caution, page).map((line) => color.caution(line)),
    ...sections.reduce<Printed>((printed, section) => printSection(section, printed, page), { lines: [], next: 1 })
      .lines,
    ...(advisory === undefined ? [] : ['', ...wrap(advisory, page.width).map((line) => color.faint(line))]),
  ]
  return `${lines.join('\n')}\n`
}

function lineOf(text: string | undefined, { width }: Page): readonly string[] {
  return text === undefined ? [] : wrap(text, width)
}

const narrowest = 40
const labelWidth = 9

interface Printed {
  readonly lines: readonly string[]
  /** The number of the next item that carries one. */
  readonly next: number
}

function printSection(section: Section, { lines, next }: Printed, page: Page): Printed {
  const { heading, tone, note, items, numbered } = section
  const { paint, width } = page
  const head = [
    '',
    ...wrap(heading, width).map((line) => paint[tone](line)),
    paint.faint('-'.repeat(Math.min(heading.length, width))),
  ]
  const said = note === undefined ? [] : wrap(note, width)
  const printed = items.flatMap((item, index) => printItem(item, numbered ? next + index : undefined, page))
  return { lines: [...lines, ...head, ...said, ...printed], next: numbered ? next + items.length : next }
}

function printItem({ head, aside, text, rows }: Item, number: number | undefined, page: Page): readonly string[] {
  const indent = number === undefined ? '' : '    '
  const inner = { ...page, width: page.width - indent.length }
  const title = head === undefined ? [] : twoEnds(head, aside ?? '', inner).map((line) => page.paint.heading(line))
  const lines = [
    ...title,
    ...(text === undefined ? [] : wrap(text, inner.width)),
    ...rows.flatMap((row) => printRow(row, inner)),
  ]
  if (number === undefined) return head === undefined ? lines : ['', ...lines]
  return ['', ...lines.map((line, index) => `${index === 0 ? `${number}.`.padEnd(indent.length) : indent}${line}`)]
}

function printRow({ label, text, tone }: Row, { width, paint }: Page): readonly string[] {
  const say = tone === undefined ? paint.faint : paint[tone]
  return wrap(text, width - labelWidth).map(
    (line, index) =>
      `${index === 0 ? say(label.padEnd(labelWidth)) : ' '.repeat(labelWidth)}${tone === 'caution' ? say(line) : line}`,
  )
}

/** Two texts on the two ends of a line, or one under the other where they do not fit. */
function twoEnds(left: string, right: string, { width }: Page): readonly string[] {
  const [start, end] = [oneLine(left), oneLine(right)]
  const gap = width - start.length - end.length
  if (end !== '' && gap >= 2) return [`${start}${' '.repeat(gap)}${end}`]
  return [...wrap(start, width), ...(end === '' ? [] : wrap(end, width).map((line) => line.padStart(width)))]
}
