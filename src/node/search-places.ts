import { dirname, join, resolve } from 'node:path'
import type { Problem } from '../model/index.js'
import { atPath } from './files.js'
import type { FileKind } from './wanted-file.js'

/** Where overlays and equipment are looked for, in this order: beside the document, in what was given, in the package. */
export interface FilePlaces {
  /** The document's own file; without it nothing is looked for beside it. */
  readonly document?: string
  /** Folders and files given as overlays. */
  readonly overlays: readonly string[]
  /** Folders and files given as equipment. */
  readonly equipment: readonly string[]
  /** The folder of this package, for its own examples; without it they are not looked for. */
  readonly packageFolder?: string
}

/** Where a file was found. */
export type FoundIn = 'beside' | 'given' | 'package'

/** One place to look: a folder, with the folder that is not left from there, or a single file that was given. */
export type SearchPlace =
  | { readonly type: 'folder'; readonly from: FoundIn; readonly path: string; readonly within: string }
  | { readonly type: 'file'; readonly from: FoundIn; readonly path: string }

/** The places for one kind of file, nearest first. */
export function searchPlaces(kind: FileKind, places: FilePlaces): readonly SearchPlace[] {
  return [
    ...beside(kind, places.document),
    ...givenFor(kind, places).flatMap(given),
    ...inPackage(kind, places.packageFolder),
  ]
}

/** Places that were given and are not there. */
export function lostPlaces(places: FilePlaces): readonly Problem[] {
  return [...places.overlays, ...places.equipment]
    .filter((path) => given(path).length === 0)
    .map((path) => ({ code: 'no-such-file', pointer: '', message: 'There is no such file or folder.', file: path }))
}

const folderOf = { overlay: 'overlays', equipment: 'equipment' } as const

function givenFor(kind: FileKind, places: FilePlaces): readonly string[] {
  return kind === 'overlay' ? places.overlays : places.equipment
}

function beside(kind: FileKind, document: string | undefined): readonly SearchPlace[] {
  if (document === undefined) return []
  const within = dirname(resolve(document))
  return [within, join(within, folderOf[kind])].map((path) => ({ type: 'folder', from: 'beside', path, within }))
}

function given(path: string): readonly SearchPlace[] {
  const full = resolve(path)
  const found = atPath(full)
  if (found === 'folder') return [{ type: 'folder', from: 'given', path: full, within: full }]
  return found === undefined ? [] : [{ type: 'file', from: 'given', path: full }]
}

function inPackage(kind: FileKind, packageFolder: string | undefined): readonly SearchPlace[] {
  if (packageFolder === undefined) return []
  return [
    { type: 'folder', from: 'package', path: join(packageFolder, 'shared', folderOf[kind]), within: packageFolder },
  ]
}
