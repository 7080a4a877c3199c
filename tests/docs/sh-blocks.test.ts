import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { run } from '../node/commands/run.js'
import { blocksOf, root } from './pages.js'

const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  readonly scripts: Readonly<Record<string, string>>
}
const lines = blocksOf('sh').flatMap(([name, { text }]) =>
  text
    .trim()
    .split('\n')
    .map((line) => `${name} ${line}`),
)
const commands = lines.flatMap((line) => line.replace(/^\S+ /, '').split(' && '))
const ours = commands.flatMap(
  (command) => /^npx (?:hydronic-rulebook|tsx src\/node\/main[.]ts) (.*)$/.exec(command)?.[1] ?? [],
)

describe('the commands of the pages', () => {
  it('are there: two of them in the first block of the README', () => {
    expect(
      lines
        .filter((line) => line.startsWith('README.md:'))
        .slice(0, 2)
        .map((line) => line.replace(/^\S+ /, '')),
    ).toEqual(['npm ci && npm run demo', 'npm ci && npm test'])
  })

  it.each([...new Set(commands)])('can be given: %s', (command) => {
    expect(isKnown(command)).toBe(true)
  })

  it.each([...new Set(ours.map((words) => words.split(' ')[0] ?? ''))])('know %s and its options', async (name) => {
    const { out } = await run([name, '--help'])
    const options = ours.filter((words) => words.startsWith(name)).flatMap((words) => words.match(/--[a-z-]+/g) ?? [])
    expect(out).toContain(`Usage: hydronic-rulebook ${name}`)
    expect(options.filter((option) => !out.includes(option))).toEqual([])
  })

  it('run on what the project has', async () => {
    const onHand = ours.filter((words) =>
      words.split(' ').every((word) => !/[.]yaml$/.test(word) || existsSync(join(root, word))),
    )
    const known = onHand.filter((words) => !words.includes('fill/device-vent'))
    for (const words of known) expect((await run(words.split(' '))).code, words).not.toBe(2)
    expect(known.length).toBeGreaterThan(0)
  })
})

/** A script of package.json, a test folder, or our own command. */
function isKnown(command: string): boolean {
  const bare = command.replace(/^[A-Z_]+=\S+ /, '')
  if (bare === 'npm ci' || bare === 'npm test') return true
  const script = /^npm run (?:-s )?(\S+)$/.exec(bare)?.[1]
  if (script !== undefined) return Object.hasOwn(scripts, script)
  const tested = /^npx vitest run (.+)$/.exec(bare)?.[1]
  if (tested !== undefined) return tested.split(' ').every((path) => existsSync(join(root, path)))
  return /^npx (hydronic-rulebook|tsx src\/node\/main[.]ts) /.test(bare)
}
