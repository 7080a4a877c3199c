import type { Located } from '../../src/authoring/index.js'
import { readText } from '../../src/node/read-text.js'
import type { NamedData } from '../../src/rulebook/index.js'

/** A file as somebody wrote it, read with its places. */
export interface WrittenFile extends NamedData {
  readonly located: Located
}

export function fileOf(file: string, text: string): WrittenFile {
  const read = readText(text, file)
  if (!read.ok) throw new Error(read.problems.map((problem) => problem.message).join(' '))
  return { file, data: read.value, located: read }
}

export function positionsOf(files: readonly WrittenFile[]): ReadonlyMap<string, Located> {
  return new Map(files.map(({ file, located }) => [file, located]))
}
