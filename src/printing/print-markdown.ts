import type { Report } from '../findings/index.js'
import { layOut, type LayOutOptions } from './lay-out.js'
import { sheetMarkdown } from './sheet-markdown.js'

/**
 * Prints a report as Markdown, for a pull request or a wiki; the same page as {@link printText}.
 *
 * @example
 * printMarkdown(report) // begins with "# " and the name of the installation
 */
export function printMarkdown(report: Report, options: LayOutOptions = {}): string {
  return sheetMarkdown(layOut(report, options))
}
