import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { longestLine, run } from './run.js'

const house = `# what I saw
installation: 1
name: A house     # spaces stay
components:
  - { id: B1, kind: boiler }      # the boiler
  - { id: [RV1, RV2], kind: reliefValve }
spaces: [{ id: cellar }]
`

function fileOf(text: string): string {
  const file = join(mkdtempSync(join(tmpdir(), 'rulebook-count-')), 'house.yaml')
  writeFileSync(file, text)
  return file
}

describe('count', () => {
  it('shows what is listed by kind and leaves the document alone', async () => {
    const file = fileOf(house)
    const { code, out } = await run(['count', file])
    expect(code).toBe(0)
    expect(out).toMatch(/^ +1 {2}boiler$/m)
    expect(out).toMatch(/^ +2 {2}relief valve$/m)
    expect(out).toMatch(/^ +4 {2}in all/m)
    expect(longestLine(out)).toBeLessThanOrEqual(80)
    expect(readFileSync(file, 'utf8')).toBe(house)
  })

  it('confirmed, writes the counts and leaves every other byte', async () => {
    const file = fileOf(house)
    await run(['count', file, '--confirm'])
    expect(readFileSync(file, 'utf8')).toBe(house.replace('components:', 'complete: { all: 4 }\ncomponents:'))
  })

  it('renews what stands there, with its names', async () => {
    const file = fileOf(house.replace('components:', 'complete: { reliefValve: 1, all: 2 }   # last week\ncomponents:'))
    const { out } = await run(['count', file])
    expect(out).toMatch(/^ +2 {2}relief valve {2}\(1 stated\)$/m)
    await run(['count', file, '--confirm'])
    expect(readFileSync(file, 'utf8')).toContain('complete: { all: 4, reliefValve: 2 }   # last week\n')
    expect((await run(['count', file, '--confirm'])).out).toContain('stood there already')
  })

  it('keeps a stated count of no control states', async () => {
    const file = fileOf(house.replace('components:', 'complete: { all: 2, states: 0 }\ncomponents:'))
    await run(['count', file, '--confirm'])
    expect(readFileSync(file, 'utf8')).toContain('complete: { all: 4, states: 0 }')
  })

  it('closes the questions that asked whether there is more', async () => {
    // Control states are counted by themselves: a count of all things says nothing of them.
    const file = fileOf(`${house}none: [state]\n`)
    const questions = async (): Promise<number> => ((await run(['check', file])).out.match(/not listed/g) ?? []).length
    const before = await questions()
    await run(['count', file, '--confirm'])
    expect(before).toBeGreaterThan(0)
    expect(await questions()).toBe(0)
  })

  it('cannot put them where there is no place', async () => {
    const { code, err } = await run(['count', fileOf('installation: 1\n'), '--confirm'])
    expect(code).toBe(2)
    expect(err).toContain('could not be put in')
  })
})
