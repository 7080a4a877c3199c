import { readdirSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { parse } from 'yaml'

/** Published figures packed for the room that reads them, so that no door but ./node carries a YAML parser. */
export function packTables(root: string): readonly (readonly [path: string, text: string])[] {
  const folder = join(root, 'shared/tables')
  return readdirSync(folder)
    .filter((file) => file.endsWith('.yaml'))
    .toSorted()
    .map((file) => [`src/tables/${basename(file, '.yaml')}.generated.json`, pack(join(folder, file))])
}

function pack(file: string): string {
  const table: unknown = parse(readFileSync(file, 'utf8'), { maxAliasCount: 0 })
  return `${JSON.stringify(table)}\n`
}
