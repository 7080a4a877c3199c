import packed from './base.generated.json' with { type: 'json' }
import { builtInChecks, builtInFacts } from './checks/index.js'
import { builtInKinds } from './model/index.js'
import { definePlugin, type Plugin, type SourceData } from './rulebook/index.js'

const rules: Readonly<Record<string, unknown>> = packed.rules

const families: readonly SourceData['family'][] = [
  'residential',
  'mechanical',
  'fuel-gas',
  'plumbing',
  'electrical',
  'none',
]

/** Our kinds, facts, checks and rules, put together by the contract that every plugin uses. */
export const builtIn: Plugin = definePlugin({
  name: 'base',
  version: packed.version,
  contract: 1,
  kinds: builtInKinds,
  facts: builtInFacts,
  checks: builtInChecks,
  rules,
  sources: sourcesIn(packed.sources),
})

/** The packing step has held the sources against their shape; only their families are narrowed here. */
function sourcesIn(
  raw: Readonly<Record<string, { readonly title: string; readonly family: string; readonly note?: string }>>,
): Readonly<Record<string, SourceData>> {
  return Object.fromEntries(
    Object.entries(raw).map(([name, source]) => [name, { ...source, family: familyOf(source.family) }]),
  )
}

function familyOf(word: string): SourceData['family'] {
  return families.find((family) => family === word) ?? 'none'
}
