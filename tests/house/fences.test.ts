import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { brokenFences, keptFences, rooms, type Tree } from './broken-fences.js'
import { fenceRow, findViolations, readFences } from './fences.js'

const fences = await readFences()

// Inside the project, so that the planted imports find the installed packages.
mkdirSync('.tmp', { recursive: true })
const plot = mkdtempSync(join('.tmp', 'fences-'))
afterAll(() => {
  rmSync(plot, { recursive: true })
})

describe('the fences of src', () => {
  it('all stand', async () => {
    const violations = await findViolations('.')
    expect(violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`)).toEqual([])
  })

  it('enclose every folder', () => {
    const folders = readdirSync('src', { withFileTypes: true }).filter((item) => item.isDirectory())
    const known: readonly string[] = rooms
    expect(folders.map(({ name }) => name).filter((name) => !known.includes(name))).toEqual([])
  })

  it('are told, with their reasons, in DEVELOPERS.md', () => {
    const page = readFileSync('DEVELOPERS.md', 'utf8')
    expect(fences.map(fenceRow).filter((row) => !page.includes(row))).toEqual([])
  })
})

describe('a planted tree', () => {
  it('that keeps every fence is let through', async () => {
    expect(await violatedBy(keptFences())).toEqual([])
  })

  it('is there for each fence', () => {
    expect(Object.keys(brokenFences).toSorted()).toEqual(fences.map(({ name }) => name).toSorted())
  })

  it.each(fences)('that breaks $name is stopped by it, and by it alone', async ({ name }) => {
    for (const tree of brokenFences[name] ?? []) {
      expect(await violatedBy(tree), JSON.stringify(tree)).toEqual([name])
    }
  })
})

async function violatedBy(tree: Tree): Promise<readonly string[]> {
  const folder = mkdtempSync(join(plot, 'tree-'))
  for (const [path, text] of Object.entries(tree)) plant(join(folder, 'src', path), text)
  const violations = await findViolations(folder)
  return [...new Set(violations.map(({ rule }) => rule.name))]
}

function plant(file: string, text: string): void {
  mkdirSync(dirname(file), { recursive: true })
  writeFileSync(file, `${text}\n`)
}
