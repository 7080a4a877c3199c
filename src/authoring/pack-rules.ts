import { isMap } from '../model/index.js'
import type { NamedData, SourceData } from '../rulebook/index.js'
import { without } from './without.js'

/** A rule set as written: rule files with their paths, and the sources they cite. */
export interface RuleFiles {
  readonly version: string
  /** Files named `rules/<topic>/<name>.yaml`, read with every scalar as text. */
  readonly rules: readonly NamedData[]
  readonly sources: Readonly<Record<string, SourceData>>
}

/** A rule set as data, ready for a plugin: what is only for authors is left out. */
export interface PackedRules {
  readonly version: string
  readonly rules: Readonly<Record<string, unknown>>
  readonly sources: Readonly<Record<string, SourceData>>
}

/**
 * Puts rule files together, by id and in the order of ids. `given` and `examples` stay behind: they are for authors and tests.
 *
 * @example
 * const packed = packRules({ version: '1.0.0', rules: [{ file: 'rules/relief/present.yaml', data }], sources })
 * Object.keys(packed.rules) // ['relief/present']
 */
export function packRules({ version, rules, sources }: RuleFiles): PackedRules {
  const packed = rules.map(({ file, data }) => [ruleIdOf(file) ?? file, withoutExamples(data)] as const)
  return { version, rules: Object.fromEntries(packed.toSorted(([a], [b]) => (a < b ? -1 : 1))), sources }
}

/** The id that a rule has by its file: `relief/present` for `rules/relief/present.yaml`. Undefined where the file lies elsewhere. */
export function ruleIdOf(file: string): string | undefined {
  return /(?:^|[\\/])rules[\\/]([a-z][a-z0-9-]*)[\\/]([a-z][a-z0-9-]*)\.ya?ml$/.exec(file)?.slice(1).join('/')
}

function withoutExamples(data: unknown): unknown {
  return isMap(data) ? without(data, 'given', 'examples') : data
}
