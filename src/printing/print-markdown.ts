import type { Report } from '../findings/index.js'
import { layOut } from './lay-out.js'
import { sheetMarkdown } from './sheet-markdown.js'

export interface MarkdownOptions {
  /** Files that were opened for this report, to be told at its foot. */
  readonly opened?: readonly string[]
}

/**
 * Prints a report as Markdown, for a pull request or a wiki; the same page as {@link printText}.
 *
 * @example
 * printMarkdown(report) // begins with "# " and the name of the installation
 */
export function printMarkdown(report: Report, { opened = [] }: MarkdownOptions = {}): string {
  return sheetMarkdown(layOut(report, opened))
}
