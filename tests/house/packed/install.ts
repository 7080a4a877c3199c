import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Bench, demand, runWell } from './bench.js'

const wanted = ['LICENSE', 'README.md', 'dist/index.js', 'dist/index.d.ts', 'dist/node/main.js', 'seeds/minimal.yaml']
const welcome = /^(dist|rules|shared|seeds|docs[/]schema|docs[/]guides)[/]|^(LICENSE|README[.]md|package[.]json)$/

/** Packs the project into the bench folder. */
export async function pack(folder: string): Promise<Bench> {
  const told = await runWell('npm', ['pack', '--json', '--ignore-scripts', '--pack-destination', folder], '.')
  const [packed] = JSON.parse(told) as { filename: string; size: number; files: { path: string }[] }[]
  if (packed === undefined) throw new Error('npm pack told nothing.')
  const { exports } = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: Record<string, unknown> }
  const doors = Object.keys(exports).filter((door) => !/[*]|[.]json$/.test(door))
  checkContents(packed.files.map(({ path }) => path))
  console.log(`packed: ${packed.files.length} files, ${Math.round(packed.size / 1000)} kB`)
  return { folder, tarball: packed.filename, doors: doors.map((door) => door.replace('.', 'hydronic-rulebook')) }
}

/** Installs the tarball, with what it depends on and nothing else, into an empty project. */
export async function install({ folder, tarball }: Bench): Promise<string> {
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ name: 'consumer', private: true }))
  await runWell('npm', ['install', '--no-audit', '--no-fund', '--prefer-offline', `./${tarball}`], folder)
  const told = JSON.parse(await runWell('npm', ['ls', '--all', '--json'], folder)) as { problems?: string[] }
  demand(told.problems === undefined, `npm ls: ${told.problems?.join('; ') ?? ''}`)
  return 'installed into an empty project'
}

function checkContents(paths: readonly string[]): void {
  const lost = wanted.filter((path) => !paths.includes(path))
  demand(lost.length === 0, `The tarball lacks ${lost.join(', ')}.`)
  const astray = paths.filter((path) => !welcome.test(path))
  demand(astray.length === 0, `The tarball should not hold ${astray.join(', ')}.`)
}
