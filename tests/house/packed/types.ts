import { readFileSync, writeFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import ts from 'typescript'
import { type Bench, demand, runWell } from './bench.js'

const { createPrinter, createSourceFile, ScriptTarget } = ts

const consumer = `
import { checkInstallation, openRulebook, type Report } from 'hydronic-rulebook'
import { base } from 'hydronic-rulebook/base'

export function outcomeOf(document: Parameters<typeof checkInstallation>[0]): 'failing' | 'open' | 'clear' {
  const report: Report = checkInstallation(document, openRulebook({ ruleSets: [base] }))
  return report.outcome
}
`

const settings = {
  compilerOptions: {
    strict: true,
    exactOptionalPropertyTypes: true,
    noEmit: true,
    module: 'nodenext',
    target: 'es2022',
    lib: ['es2023', 'dom'],
    types: [],
    skipLibCheck: false,
  },
  include: ['*.mts', '*.cts'],
}

/** A strict consumer compiles against the packed declarations, as a module and as a CommonJS script. */
export async function compileConsumer({ folder, doors }: Bench): Promise<string> {
  const everyDoor = doors.map((door, at) => `import * as door${at} from '${door}'\nvoid door${at}\n`).join('')
  writeFileSync(join(folder, 'consumer.mts'), consumer)
  writeFileSync(join(folder, 'consumer.cts'), consumer)
  writeFileSync(join(folder, 'doors.mts'), everyDoor)
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(settings))
  await runWell('node', [resolve('node_modules/typescript/bin/tsc'), '-p', '.'], folder)
  return 'a strict consumer compiles, libraries checked too'
}

/** What an editor has to check for the front door stays small; comments are read by people only, and the longer the better. */
export function measureDeclarations({ folder }: Bench): string {
  const dist = join(folder, 'node_modules/hydronic-rulebook/dist')
  const texts = reachedFrom(join(dist, 'index.d.ts'), new Map())
  const bytes = total([...texts.values()].map((text) => withoutComments(text).length))
  const all = total([...texts.values()].map((text) => text.length))
  demand(
    bytes < 150_000,
    `The declarations of the front door are ${bytes} bytes without comments; 150,000 are allowed.`,
  )
  return `declarations: ${kB(bytes)} kB in ${texts.size} files of the front door (below 150), ${kB(all)} kB with comments`
}

/** A declaration file with all that it imports; a consumer of one door loads nothing of the others. */
function reachedFrom(file: string, reached: Map<string, string>): ReadonlyMap<string, string> {
  if (reached.has(file)) return reached
  const text = readFileSync(file, 'utf8')
  reached.set(file, text)
  for (const [, path = ''] of text.matchAll(/from '(\.[^']+)\.js'/g))
    reachedFrom(join(dirname(file), `${path}.d.ts`), reached)
  return reached
}

function withoutComments(text: string): string {
  const source = createSourceFile('declarations.d.ts', text, ScriptTarget.ES2022)
  return createPrinter({ removeComments: true }).printFile(source)
}

const total = (sizes: readonly number[]): number => sizes.reduce((sum, size) => sum + size, 0)
const kB = (bytes: number): string => (bytes / 1000).toFixed(1)
