import type { Report } from '../findings/index.js'
import { layOut, type LayOutOptions } from './lay-out.js'
import { sheetText, type PageOptions } from './sheet-text.js'

/** How a report is printed as text. */
export interface TextOptions extends PageOptions, LayOutOptions {}

/**
 * Prints a report as a page of plain text, for a terminal or a printer. What is to be mended comes first, worst first;
 * what it all rests on comes last.
 *
 * @example
 * printText(report) // ends with a line break; no line is longer than 80 columns
 */
export function printText(report: Report, options: TextOptions = {}): string {
  return sheetText(layOut(report, options), options)
}
