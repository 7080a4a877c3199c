import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Located } from '../authoring/index.js'
import { isMap, type Problem } from '../model/index.js'
import type { NamedData } from '../rulebook/index.js'
import { readText } from './read-text.js'

/** Everything that people write and the build step reads, with the places of all values. */
export interface WrittenSources {
  readonly version: string
  readonly rules: readonly NamedData[]
  readonly sources: NamedData
  readonly overlays: readonly NamedData[]
  readonly retired?: NamedData
  readonly positions: ReadonlyMap<string, Located>
  /** What is wrong with the notation of files; those are not among the rest. */
  readonly problems: readonly Problem[]
}

/** Reads rules, sources and overlays from the project's folder. */
export function readSourceFiles(root: string): WrittenSources {
  const positions = new Map<string, Located>()
  const problems: Problem[] = []
  const read = (file: string): readonly NamedData[] => {
    const text = readText(readFileSync(join(root, file), 'utf8'), file)
    if (!text.ok) problems.push(...text.problems)
    if (!text.ok) return []
    positions.set(file, text)
    return [{ file, data: text.value }]
  }
  const [retired] = existsSync(join(root, 'rules/retired.yaml')) ? read('rules/retired.yaml') : []
  const [sources = { file: 'shared/sources.yaml', data: {} }] = read('shared/sources.yaml')
  const rules = yamlFiles(root, 'rules')
    .filter((file) => file !== 'rules/retired.yaml')
    .flatMap(read)
  const overlays = yamlFiles(root, 'shared/overlays').flatMap(read)
  return {
    version: versionOf(root),
    rules,
    sources,
    overlays,
    ...(retired === undefined ? {} : { retired }),
    positions,
    problems,
  }
}

function yamlFiles(root: string, folder: string): readonly string[] {
  const found = readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
  return found
    .filter((name) => /\.ya?ml$/.test(name))
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .toSorted()
}

function versionOf(root: string): string {
  const manifest: unknown = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
  return isMap(manifest) && typeof manifest.version === 'string' ? manifest.version : '0.0.0'
}
