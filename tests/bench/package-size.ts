import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { build } from 'tsup'
import ts from 'typescript'
import { twoTowns } from './houses.js'
import { median } from './measure.js'
import { printTable, spokenSize } from './table.js'

const doors = { index: 'src/index.ts', base: 'src/base.ts' }
const repeats = 5

const consumer = `
import { checkInstallation, openRulebook, type InstallationWritten } from 'hydronic-rulebook'
import { base } from 'hydronic-rulebook/base'

const document: InstallationWritten = { installation: 1, components: [{ id: 'B1', kind: 'boiler', mawp: '50 psi' }] }
export const outcome: string = checkInstallation(document, openRulebook({ ruleSets: [base] })).outcome
`

/** What the front door costs a page that loads it, and an editor that reads its types. */
export async function measurePackage(folder: string): Promise<void> {
  const bundle = await bundleFrontDoor(folder)
  const types = await declare(folder)
  const { alone, checked } = checkTimes(folder)
  printTable(`The front door, with the types of ${twoTowns.model.kinds.size} kinds`, [
    ['', 'measured', 'allowed'],
    ['bundled for a browser, gzipped, without rules', spokenSize(bundle), '60 kB'],
    ['declarations of . and ./base', spokenSize(types), '150 kB, all doors'],
    ['type check of an empty file', `${alone.toFixed(2)} s`, ''],
    ['type check of a consumer', `${checked.toFixed(2)} s`, ''],
    ['what the types cost it', `${(checked - alone).toFixed(2)} s`, '1.5 s'],
  ])
}

async function bundleFrontDoor(folder: string): Promise<number> {
  const outDir = join(folder, 'bundle')
  await build({
    config: false,
    entry: { front: doors.index },
    outDir,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    noExternal: [/./],
    minify: true,
    treeshake: true,
    silent: true,
  })
  return gzipSync(readFileSync(join(outDir, 'front.js'))).length
}

/** The declarations as they are published, in a package folder that a consumer finds by its name. */
async function declare(folder: string): Promise<number> {
  const home = join(folder, 'node_modules/hydronic-rulebook')
  mkdirSync(home, { recursive: true })
  await build({
    config: false,
    entry: doors,
    outDir: home,
    format: 'esm',
    dts: { only: true, entry: doors },
    silent: true,
  })
  const exported = { '.': './index.d.ts', './base': './base.d.ts' }
  writeFileSync(
    join(home, 'package.json'),
    JSON.stringify({ name: 'hydronic-rulebook', type: 'module', exports: exported }),
  )
  const files = readdirSync(home).filter((file) => file.endsWith('.d.ts'))
  return files.reduce((sum, file) => sum + statSync(join(home, file)).size, 0)
}

/** Seconds of processor time that the compiler needs for an empty file and for a consumer, read anew each time, in turns. */
function checkTimes(folder: string): { readonly alone: number; readonly checked: number } {
  const [empty, full] = [join(folder, 'empty.mts'), join(folder, 'consumer.mts')]
  writeFileSync(empty, 'export {}\n')
  writeFileSync(full, consumer)
  checkOnce(full)
  const turns = Array.from({ length: repeats }, () => ({ alone: checkOnce(empty), checked: checkOnce(full) }))
  return { alone: median(turns.map(({ alone }) => alone)), checked: median(turns.map(({ checked }) => checked)) }
}

function checkOnce(file: string): number {
  const start = process.cpuUsage()
  const program = ts.createProgram([file], {
    noEmit: true,
    strict: true,
    exactOptionalPropertyTypes: true,
    module: ts.ModuleKind.NodeNext,
    target: ts.ScriptTarget.ES2022,
    types: [],
  })
  const [problem] = ts.getPreEmitDiagnostics(program)
  if (problem !== undefined) throw new Error(ts.flattenDiagnosticMessageText(problem.messageText, '\n'))
  const { user, system } = process.cpuUsage(start)
  return (user + system) / 1_000_000
}
