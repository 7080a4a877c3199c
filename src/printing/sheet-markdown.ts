import type { Item, Section, Sheet } from './sheet.js'
import { oneLine } from './wrap.js'

/** Prints a page as Markdown. What a document says is escaped, so it cannot become markup. */
export function sheetMarkdown({ title, about, headline, caution, sections, advisory }: Sheet): string {
  const blocks = [
    `# ${escaped(title)}`,
    about === undefined ? undefined : escaped(about),
    headline === undefined ? undefined : `**${escaped(headline.text)}**`,
    caution === undefined ? undefined : `> ${escaped(caution)}`,
    ...sections.reduce<Printed>(printSection, { blocks: [], next: 1 }).blocks,
    ...(advisory === undefined ? [] : ['---', escaped(advisory)]),
  ]
  return `${blocks.filter((block) => block !== undefined).join('\n\n')}\n`
}

interface Printed {
  readonly blocks: readonly string[]
  readonly next: number
}

function printSection({ blocks, next }: Printed, { heading, note, items, numbered }: Section): Printed {
  const printed = items.flatMap((item, index) => printItem(item, numbered ? `${next + index}. ` : ''))
  return {
    blocks: [...blocks, `## ${escaped(heading)}`, ...(note === undefined ? [] : [escaped(note)]), ...printed],
    next: numbered ? next + items.length : next,
  }
}

function printItem({ head, aside, text, rows }: Item, number: string): readonly string[] {
  const title =
    head === undefined ? [] : [`### ${number}${escaped(head)}${aside === undefined ? '' : ` (${escaped(aside)})`}`]
  const list = rows.map(({ label, text: words }) => `- **${escaped(label)}** ${escaped(words)}`).join('\n')
  return [...title, ...(text === undefined ? [] : [escaped(text)]), ...(list === '' ? [] : [list])]
}

/** Text that stays text: every mark of Markdown and HTML is escaped, and none can begin a block. */
export function escaped(text: string): string {
  return oneLine(text)
    .replace(/&/g, '&amp;')
    .replace(/[\\`*_{}[\]<>|#~!]/g, '\\$&')
    .replace(/^([-+=])/, '\\$1')
    .replace(/^(\d+)([.)])/, '$1\\$2')
}
