import { realpathSync } from 'node:fs'
import { isAbsolute, join, relative, resolve } from 'node:path'
import type { Problem } from '../model/index.js'
import { atPath, attempt } from './files.js'
import { searchPlaces, type FilePlaces, type FoundIn, type SearchPlace } from './search-places.js'
import { answersTo, judgeFileName, namesOf, type WantedFile } from './wanted-file.js'

/** What a search for one name came to. */
export type Search =
  | { readonly type: 'found'; readonly wanted: WantedFile; readonly path: string; readonly from: FoundIn }
  | { readonly type: 'missing'; readonly wanted: WantedFile }
  | { readonly type: 'refused'; readonly problem: Problem }

/** Looks for one name, nearest place first, without reading anything. */
export function searchForFile(wanted: WantedFile, places: FilePlaces): Search {
  const problem = judgeFileName(wanted)
  if (problem !== undefined) return { type: 'refused', problem }
  const nearest = searchPlaces(wanted.kind, places)
    .flatMap((place) => candidatesIn(place, wanted))
    .find(({ path }) => atPath(path) === 'file' && !isDocument(path, places))
  if (nearest === undefined) return { type: 'missing', wanted }
  if (leadsOut(nearest)) return { type: 'refused', problem: outside(wanted) }
  return { type: 'found', wanted, path: nearest.path, from: nearest.place.from }
}

interface Candidate {
  readonly path: string
  readonly place: SearchPlace
}

function candidatesIn(place: SearchPlace, wanted: WantedFile): readonly Candidate[] {
  if (place.type === 'file') return answersTo(place.path, wanted) ? [{ path: place.path, place }] : []
  return namesOf(wanted).map((name) => ({ path: join(place.path, `${name}.yaml`), place }))
}

function isDocument(path: string, places: FilePlaces): boolean {
  return places.document !== undefined && realPath(path) === realPath(resolve(places.document))
}

function leadsOut({ path, place }: Candidate): boolean {
  if (place.type === 'file') return false
  const way = relative(realPath(place.within) ?? place.within, realPath(path) ?? path)
  return way.startsWith('..') || isAbsolute(way)
}

function realPath(path: string): string | undefined {
  return attempt(() => realpathSync(path))
}

function outside({ name, pointer }: WantedFile): Problem {
  return {
    code: 'outside-folder',
    pointer,
    message: `"${name}" is a link that leads out of its folder: give the file itself on the command line.`,
  }
}
