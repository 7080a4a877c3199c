import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { attempt } from './files.js'

/**
 * The folder of this package, where `shared/`, `rules/` and `seeds/` stand: the same from the source and from the built files.
 *
 * @param from - The URL of a module inside the package.
 * @throws Error where the module has been bundled into another package and its folder cannot be told.
 */
export function packageFolder(from: string = import.meta.url): string {
  const folder = foldersAbove(fileURLToPath(from)).find(isOurs)
  if (folder === undefined)
    throw new Error(
      `No folder above ${from} is the package hydronic-rulebook: give folders of overlays and equipment instead.`,
    )
  return folder
}

function foldersAbove(path: string): readonly string[] {
  const folder = dirname(path)
  return folder === path ? [] : [folder, ...foldersAbove(folder)]
}

function isOurs(folder: string): boolean {
  const manifest = attempt<unknown>(() => JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')))
  return (
    typeof manifest === 'object' && manifest !== null && 'name' in manifest && manifest.name === 'hydronic-rulebook'
  )
}
