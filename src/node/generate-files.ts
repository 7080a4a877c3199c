import { join } from 'node:path'
import { jsonSchemas, lintRuleSet, packRules, readSources, ruleIdOf, writePages } from '../authoring/index.js'
import { builtInChecks, builtInFacts } from '../checks/index.js'
import { builtInKinds, type Problem } from '../model/index.js'
import { definePlugin, openRulebook, type Plugin } from '../rulebook/index.js'
import { collectMeanings } from './generate-meanings.js'
import { readSourceFiles } from './generate-sources.js'
import { packTables } from './generate-tables.js'

/** Texts by path from the project's folder, or why none can be made. */
export type GeneratedFiles =
  | { readonly ok: true; readonly files: ReadonlyMap<string, string> }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/** Folders in which nothing else stands: what is there and not generated any more goes. */
export const generatedFolders: readonly string[] = ['docs/rules', 'docs/schema']

/** Makes every generated file from what people wrote: packed rules and tables, meanings, pages and schemas. Same bytes in, same bytes out. */
export function generateFiles(root: string): GeneratedFiles {
  const written = readSourceFiles(root)
  const problems = [...written.problems, ...lintRuleSet({ ...written, plugins: [foundation(written.version)] })]
  if (problems.length > 0) return { ok: false, problems }
  const packed = packRules({ ...written, sources: readSources(written.sources).sources })
  const rulebook = openRulebook({
    ruleSets: [{ ...foundation(written.version), rules: packed.rules, sources: packed.sources }],
  })
  const meanings = collectMeanings(join(root, 'src'))
  const rules = written.rules.map(({ file, data }) => ({ id: ruleIdOf(file) ?? file, data }))
  const schemas = Object.entries(jsonSchemas({ rulebook, meanings })).map(
    ([name, schema]) => [`docs/schema/${name}.json`, json(schema)] as const,
  )
  return {
    ok: true,
    files: new Map([
      ['src/base.generated.json', json(packed)],
      ['src/authoring/meanings.generated.json', json(meanings)],
      ...packTables(root),
      ...writePages({ rulebook, rules, meanings }),
      ...schemas,
    ]),
  }
}

/** What the base rules stand on. The packed rules themselves are made here, so they cannot be asked for. */
function foundation(version: string): Plugin {
  return definePlugin({
    name: 'base',
    version,
    contract: 1,
    kinds: builtInKinds,
    facts: builtInFacts,
    checks: builtInChecks,
  })
}

function json(data: unknown): string {
  return `${JSON.stringify(data, null, 1)}\n`
}
