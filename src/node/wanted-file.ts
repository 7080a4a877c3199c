import { basename, sep } from 'node:path'
import type { Problem } from '../model/index.js'

/** An authority's overlay, or a maker's data for one model. */
export type FileKind = 'overlay' | 'equipment'

/** A file that a document asks for by name. */
export interface WantedFile {
  readonly kind: FileKind
  /** The name of an authority (`saltmarrow`), or the text after `use:` (`equipment/b75`). */
  readonly name: string
  /** Where the document names it. */
  readonly pointer: string
}

/** What is wrong with the name: a document may not lead out of the folders it is given. */
export function judgeFileName(wanted: WantedFile): Problem | undefined {
  const shape = wanted.kind === 'overlay' ? authorityName : equipmentName
  if (wanted.name.length <= longestName && shape.test(wanted.name)) return undefined
  const stem = wanted.name.replace(extension, '')
  const message = `"${wanted.name.slice(0, longestName)}" is no name of ${spoken[wanted.kind]}.`
  const problem = { code: 'unreadable-file-name', pointer: wanted.pointer, message, expected: expected[wanted.kind] }
  return stem !== wanted.name && shape.test(stem) ? { ...problem, nearest: stem } : problem
}

/** The file names, without extension, that answer to a name inside a folder. */
export function namesOf({ kind, name }: WantedFile): readonly string[] {
  const short = name.replace(/^equipment\//, '')
  return kind === 'overlay' || short === name ? [name] : [name, short]
}

/** Whether a single file, found anywhere, answers to a name. */
export function answersTo(path: string, wanted: WantedFile): boolean {
  const stem = path.replace(extension, '').replaceAll(sep, '/')
  return namesOf(wanted).some((name) => stem.endsWith(`/${name}`))
}

/** The name of a file without folder and extension. */
export function ownName(path: string): string {
  return basename(path).replace(extension, '')
}

const extension = /[.](yaml|yml|json)$/
const longestName = 200
const authorityName = /^[A-Za-z0-9][A-Za-z0-9-]*$/
const equipmentName = /^[A-Za-z0-9][A-Za-z0-9-]*(\/[A-Za-z0-9][A-Za-z0-9-]*)*$/
const spoken = { overlay: 'an authority', equipment: 'an equipment file' } as const
const expected = {
  overlay: 'letters, digits and dashes, as in "saltmarrow"',
  equipment: 'letters, digits and dashes between single slashes, without an extension, as in "equipment/b75"',
} as const
