import { readdirSync } from 'node:fs'
import { basename } from 'node:path'
import { readSources, ruleIdOf, type WrittenRule } from '../../src/authoring/index.js'
import { builtInChecks, builtInFacts } from '../../src/checks/index.js'
import { builtInKinds } from '../../src/model/index.js'
import { readSourceFiles } from '../../src/node/generate-sources.js'
import { openFile } from '../houses/open-house.js'
import { definePlugin, openRulebook, type NamedData, type Plugin, type Rulebook } from '../../src/rulebook/index.js'

/** Everything that people write, as it stands in the project. */
export const written = readSourceFiles(process.cwd())

/** What the base rules stand on. */
export const foundation: Plugin = definePlugin({
  name: 'base',
  version: '0.0.0',
  contract: 1,
  kinds: builtInKinds,
  facts: builtInFacts,
  checks: builtInChecks,
  sources: readSources(written.sources).sources,
})

/** Small installations that examples of checks edit, by the name that `of:` gives. */
export const fragments: Readonly<Record<string, unknown>> = Object.fromEntries(
  readdirSync('seeds/fragments').map((file) => [
    `fragments/${basename(file, '.yaml')}`,
    openFile(`seeds/fragments/${file}`),
  ]),
)

export const writtenRules: readonly WrittenRule[] = written.rules.map(({ file, data }) => ({
  id: ruleIdOf(file) ?? file,
  data,
}))

/** A rulebook of these rules and overlays over our kinds, facts and checks. */
export function rulebookOf(rules: readonly WrittenRule[], overlays: readonly NamedData[] = []): Rulebook {
  return openRulebook({
    ruleSets: [{ ...foundation, rules: Object.fromEntries(rules.map(({ id, data }) => [id, data])) }],
    overlays,
  })
}
