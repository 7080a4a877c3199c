import { readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Bench, demand, run, runWell } from './bench.js'

type Names = Readonly<Record<string, readonly string[]>>

const byImport = `
const names = {}
for (const door of process.argv.slice(2)) names[door] = Object.keys(await import(door)).sort()
console.log(JSON.stringify(names))
`

const byRequire = `
const names = {}
for (const door of process.argv.slice(2)) names[door] = Object.keys(require(door)).filter((name) => name !== '__esModule').sort()
console.log(JSON.stringify(names))
`

/** Every door opens by `import` and by `require`, without a warning, onto the same names. */
export async function openDoors(bench: Bench): Promise<string> {
  const imported = await namesBy('doors.mjs', byImport, bench)
  const required = await namesBy('doors.cjs', byRequire, bench)
  demand(JSON.stringify(imported) === JSON.stringify(required), 'import and require do not find the same names.')
  const shut = bench.doors.filter((door) => imported[door]?.length === 0)
  demand(shut.length === 0, `Nothing behind ${shut.join(', ')}.`)
  return `opened by import and require: ${bench.doors.map((door) => `${door} ${imported[door]?.length ?? 0}`).join(', ')}`
}

/** Every schema file is reached by its address. */
export async function openSchemas({ folder }: Bench): Promise<string> {
  const files = readdirSync(join(folder, 'node_modules/hydronic-rulebook/docs/schema')).filter((file) =>
    file.endsWith('.json'),
  )
  demand(files.length > 0, 'No schema was packed.')
  const addresses = files.map((file) => `hydronic-rulebook/schema/${file.replace(/[.]json$/, '')}`)
  writeFileSync(join(folder, 'schemas.cjs'), 'for (const address of process.argv.slice(2)) require(address)')
  await runWell('node', ['schemas.cjs', ...addresses], folder)
  return `schemas reached: ${addresses.length}`
}

/** The command answers from an installed package. */
export async function runCommand({ folder }: Bench): Promise<string> {
  const seed = 'node_modules/hydronic-rulebook/seeds/minimal.yaml'
  const { code, output, errors } = await run('npx', ['--no', 'hydronic-rulebook', 'check', seed], folder)
  demand([0, 1, 3].includes(code) && output.trim() !== '', `check ${seed} ended with ${code}\n${output}${errors}`)
  return `hydronic-rulebook check: exit ${code}, ${output.trim().split('\n').length} lines`
}

async function namesBy(file: string, script: string, { folder, doors }: Bench): Promise<Names> {
  writeFileSync(join(folder, file), script)
  const { code, output, errors } = await run('node', [file, ...doors], folder)
  demand(code === 0 && errors === '', `${file} ended with ${code}\n${errors}`)
  return JSON.parse(output) as Names
}
