import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join, posix, relative } from 'node:path'
import ts from 'typescript'
import { afterAll, describe, expect, it } from 'vitest'
import tsupConfig from '../../tsup.config.js'
import { blocksOf, fileOf, root, type Block } from './pages.js'

// Inside the project, so that the blocks find the installed packages.
mkdirSync(join(root, '.tmp'), { recursive: true })
const folder = mkdtempSync(join(root, '.tmp/docs-'))
afterAll(() => {
  rmSync(folder, { recursive: true })
})

const doors = doorSources()
const written = blocksOf('ts').map(([name, block], at) => ({ name, block, file: write(block, `block-${at}.ts`) }))

describe('the programs of the pages', () => {
  it('fit the types', { timeout: 240_000 }, () => {
    const { config } = ts.readConfigFile(join(root, 'tsconfig.json'), (path) => readFileSync(path, 'utf8')) as {
      readonly config: object
    }
    const { options } = ts.parseJsonConfigFileContent({ ...config, include: ['*.ts'] }, ts.sys, folder)
    const program = ts.createProgram(
      written.map(({ file }) => file),
      { ...options, noUnusedLocals: false },
    )
    const problems = written.flatMap(({ name, file }) =>
      ts
        .getPreEmitDiagnostics(program, program.getSourceFile(file))
        .map(({ messageText }) => `${name}: ${ts.flattenDiagnosticMessageText(messageText, ' ')}`),
    )
    expect(problems).toEqual([])
  })

  it.each(written)('run: $name', { timeout: 120_000 }, ({ file, block }) => {
    const output = execFileSync(process.execPath, ['--import', 'tsx', file], { cwd: root, encoding: 'utf8' })
    const promised = [...block.text.matchAll(/^console\.log\(.*\) \/\/ (.*)$/gm)].map((match) => match[1])
    if (promised.length > 0) expect(output.trim().split('\n')).toEqual(promised)
    else expect(output === '').toBe(!block.text.includes('console.log'))
  })
})

/** Writes a block so that it can run here: doors of the package lead to their sources. */
function write(block: Block, name: string): string {
  const file = join(folder, name)
  const home = dirname(fileOf(block) ?? 'tests/docs/block.ts')
  const text = block.text.replaceAll(/from '([^']+)'/g, (_, specifier: string) => `from '${leadTo(specifier, home)}'`)
  writeFileSync(file, text)
  return file
}

function leadTo(specifier: string, home: string): string {
  const source = specifier.startsWith('.') ? posix.join(home, specifier) : doors.get(specifier)
  if (source === undefined) return specifier
  const path = relative(folder, join(root, source)).replaceAll('\\', '/')
  return path.replace(/[.]ts$/, '.js')
}

/** Source of every door, as package.json and the build know it: `hydronic-rulebook/base` is `src/base.ts`. */
function doorSources(): ReadonlyMap<string, string> {
  const { entry } = tsupConfig as { readonly entry: Readonly<Record<string, string>> }
  const { exports } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    readonly exports: Readonly<Record<string, string | { readonly default: string }>>
  }
  return new Map(
    Object.entries(exports).flatMap(([door, target]) => {
      const built = typeof target === 'string' ? undefined : target.default.replace(/^[.][/]dist[/]|[.]js$/g, '')
      const source = built === undefined ? undefined : entry[built]
      return source === undefined ? [] : [[door.replace('.', 'hydronic-rulebook'), source] as const]
    }),
  )
}
