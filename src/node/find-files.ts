import { resolve } from 'node:path'
import type { Problem } from '../model/index.js'
import { readTextFile } from './files.js'
import { searchForFile, type Search } from './search-for-file.js'
import { lostPlaces, searchPlaces, type FilePlaces, type FoundIn } from './search-places.js'
import { answersTo, ownName, type FileKind, type WantedFile } from './wanted-file.js'

/** A file that was opened, and where it was found. */
export interface OpenedFile {
  readonly kind: FileKind
  /** The name asked for; of a given file that no name asks for, its own name without the extension. */
  readonly name: string
  /** Absolute. */
  readonly path: string
  readonly from: FoundIn
  readonly text: string
}

/** What a search opened and what it did not. */
export interface FoundFiles {
  readonly opened: readonly OpenedFile[]
  /** Names without a file. No problem by itself: an authority without an overlay is an open question of the report. */
  readonly missing: readonly WantedFile[]
  /** Given files left closed, since a file of the same name stands nearer to the document. */
  readonly passedOver: readonly string[]
  /** Names that are no names, files that cannot be read, places that are not there. */
  readonly problems: readonly Problem[]
}

/**
 * Finds the overlays and equipment that a document names: beside it (in its folder, and in `overlays/` and `equipment/`
 * there), then in the folders and files that were given, then among the package's own examples. The nearest file of a name
 * is opened. No name and no link leads out of these folders. A given file is opened whether a name asks for it or not.
 */
export function findFiles(wanted: readonly WantedFile[], places: FilePlaces): FoundFiles {
  const searches = onceEach(wanted).map((file) => searchForFile(file, places))
  const asked = searches.flatMap((search) => (search.type === 'found' ? [closedFile(search)] : []))
  const rest = givenFiles(places).filter(({ path }) => !asked.some((file) => file.path === path))
  const [passedOver, unasked] = parted(rest, (file) =>
    wanted.some((other) => other.kind === file.kind && answersTo(file.path, other)),
  )
  const files = [...asked, ...unasked].map((file) => ({ file, read: readTextFile(file.path) }))
  return {
    opened: files.flatMap(({ file, read }) => (read.ok ? [{ ...file, text: read.text }] : [])),
    missing: searches.flatMap((search) => (search.type === 'missing' ? [search.wanted] : [])),
    passedOver: passedOver.map((file) => file.path),
    problems: [
      ...lostPlaces(places),
      ...searches.flatMap((search) => (search.type === 'refused' ? [search.problem] : [])),
      ...files.flatMap(({ read }) => (read.ok ? [] : read.problems)),
    ],
  }
}

type ClosedFile = Omit<OpenedFile, 'text'>

function closedFile({ wanted, path, from }: Extract<Search, { type: 'found' }>): ClosedFile {
  return { kind: wanted.kind, name: wanted.name, path, from }
}

function onceEach(wanted: readonly WantedFile[]): readonly WantedFile[] {
  const first = new Map<string, WantedFile>()
  for (const file of wanted) if (!first.has(`${file.kind} ${file.name}`)) first.set(`${file.kind} ${file.name}`, file)
  return [...first.values()]
}

function givenFiles(places: FilePlaces): readonly ClosedFile[] {
  const kinds: readonly FileKind[] = ['overlay', 'equipment']
  return kinds.flatMap((kind) =>
    searchPlaces(kind, places).flatMap(({ type, path, from }) =>
      type === 'file' ? [{ kind, name: ownName(path), path: resolve(path), from }] : [],
    ),
  )
}

function parted<T>(items: readonly T[], belongs: (item: T) => boolean): readonly [readonly T[], readonly T[]] {
  return [items.filter(belongs), items.filter((item) => !belongs(item))]
}
