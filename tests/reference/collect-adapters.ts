import { readdirSync } from 'node:fs'
import type { Adapter } from './adapter.js'

/** The adapters of all topic files beside this one: files that export `adapters`. */
export async function collectAdapters(): Promise<ReadonlyMap<string, Adapter>> {
  const folder = new URL('./', import.meta.url)
  const files = readdirSync(folder).filter((name) => name.endsWith('.ts') && !machinery.includes(name))
  const found = new Map<string, Adapter>()
  for (const file of files.toSorted()) {
    const topic: { readonly adapters?: Readonly<Record<string, Adapter>> } = await import(new URL(file, folder).href)
    if (topic.adapters === undefined) throw new Error(`tests/reference/${file} exports no adapters.`)
    const twice = Object.keys(topic.adapters).find((key) => found.has(key))
    if (twice !== undefined) throw new Error(`Two topics answer for ${twice}; the second is ${file}.`)
    for (const [key, adapter] of Object.entries(topic.adapters)) found.set(key, adapter)
  }
  return found
}

const machinery = [
  'adapter.ts',
  'check-records.ts',
  'collect-adapters.ts',
  'contradictions.ts',
  'input-of.ts',
  'read-records.ts',
  'reference.test.ts',
  'report.ts',
  'run.ts',
]
