import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { generatedFolders } from './generate-files.js'

/** A generated file that is not what it should be on disk; without text it should not be there. */
export interface Difference {
  readonly path: string
  readonly text?: string
}

/** Holds generated texts against what stands on disk. */
export function differencesOf(root: string, files: ReadonlyMap<string, string>): readonly Difference[] {
  const changed = [...files].filter(
    ([path, text]) => !existsSync(join(root, path)) || readFileSync(join(root, path), 'utf8') !== text,
  )
  const left = generatedFolders.flatMap((folder) => filesUnder(root, folder)).filter((path) => !files.has(path))
  return [...changed.map(([path, text]) => ({ path, text })), ...left.map((path) => ({ path }))]
}

/** Brings the disk in line. */
export function settle(root: string, differences: readonly Difference[]): void {
  for (const { path, text } of differences) {
    const place = join(root, path)
    if (text === undefined) rmSync(place)
    else write(place, text)
  }
}

function write(place: string, text: string): void {
  mkdirSync(dirname(place), { recursive: true })
  writeFileSync(place, text)
}

function filesUnder(root: string, folder: string): readonly string[] {
  if (!existsSync(join(root, folder))) return []
  const found = readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
  return found
    .filter((item) => item.isFile())
    .map((item) => join(item.parentPath, item.name).slice(root.length).replaceAll('\\', '/').replace(/^\/+/, ''))
}
