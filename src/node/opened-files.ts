import { relative } from 'node:path'
import type { Problem } from '../model/index.js'
import { CouldNotRun } from './could-not-run.js'
import type { OpenedFile } from './find-files.js'
import { parseText, type LoadedText } from './load-text.js'

/** An opened file, parsed. */
export interface ParsedFile {
  readonly opened: OpenedFile
  readonly text: LoadedText
}

/**
 * Parses every file before anything is refused, so that all problems are told at once.
 *
 * @throws CouldNotRun
 */
export function parseAll(files: readonly OpenedFile[]): readonly ParsedFile[] {
  const problems: Problem[] = []
  const parsed = files.flatMap((opened) => {
    try {
      return [{ opened, text: parseText(opened.text, shown(opened.path)) }]
    } catch (reason) {
      if (!(reason instanceof CouldNotRun)) throw reason
      problems.push(...reason.problems)
      return []
    }
  })
  if (problems.length > 0) throw new CouldNotRun(problems)
  return parsed
}

const places: Readonly<Record<OpenedFile['from'], string>> = {
  beside: 'beside the document',
  given: 'given',
  package: 'example of the package',
}

/** A file and where it was found. */
export function tellOpened({ path, from }: OpenedFile): string {
  return `${shown(path)} (${places[from]})`
}

/** A path as short as it can be told from here. */
export function shown(path: string): string {
  const short = relative('.', path)
  return short.startsWith('..') ? path : short
}
