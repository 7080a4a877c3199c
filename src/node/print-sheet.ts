import { sheetMarkdown, sheetText, type Sheet } from '../printing/index.js'
import { pageFor, type CommandLineIo } from './terminal.js'

/** How a page that has data behind it can be printed. */
export const sheetFormats = ['text', 'markdown', 'json'] as const

export type SheetFormat = (typeof sheetFormats)[number]

interface Printed {
  readonly sheet: Sheet
  /** What `json` gives in its place. */
  readonly data: unknown
}

/** A page as text for this terminal or as markdown, or the data behind it. */
export function printSheet({ sheet, data }: Printed, format: SheetFormat, io: CommandLineIo): string {
  switch (format) {
    case 'text':
      return sheetText(sheet, pageFor(io))
    case 'markdown':
      return sheetMarkdown(sheet)
    case 'json':
      return `${JSON.stringify(data, null, 2)}\n`
    default:
      return neverFormat(format)
  }
}

function neverFormat(format: never): never {
  throw new TypeError(`no such format: ${String(format)}`)
}
