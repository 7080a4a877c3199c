import { execFileSync, spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const tsx = 'node_modules/.bin/tsx'

describe('docs/examples', () => {
  it('embed: a form in about thirty lines tells what is wrong after each answer', () => {
    const out = execFileSync(tsx, ['docs/examples/embed/main.ts'], { encoding: 'utf8' })
    const [before, after, fail] = out.trim().split('\n')
    expect(before).toMatch(/^NOT READY: 0 wrong, \d+ cannot be told$/)
    expect(after).toMatch(/^NOT READY: 1 wrong, \d+ cannot be told$/)
    expect(fail).toBe('  stop: Relief at B1 opens at 50 psi; the model code allows 30 psi.')
    const lines = readFileSync('docs/examples/embed/main.ts', 'utf8')
      .split('\n')
      .filter((line) => /[a-z]/.test(line))
    expect(lines.length).toBeLessThan(36)
  })

  it('plugin: one kind, one fact, two checks and one rule, loaded by the command line', () => {
    const argv = [
      'src/node/main.ts',
      'check',
      'docs/examples/plugin/house.yaml',
      '--plugin',
      'docs/examples/plugin/index.ts',
      '--format',
      'json',
    ]
    const { stdout, status } = spawnSync(tsx, argv, { encoding: 'utf8' })
    expect(status).toBe(3)
    const report: unknown = JSON.parse(stdout)
    expect(report).toMatchObject({
      findings: expect.arrayContaining([
        expect.objectContaining({
          key: 'mix-feeder/fill/feeder/MF1',
          verdict: 'fail',
          demands: [
            expect.objectContaining({ id: 'heard', verdict: 'fail' }),
            expect.objectContaining({ id: 'little', verdict: 'fail' }),
            expect.objectContaining({ id: 'open', verdict: 'fail' }),
          ],
        }),
      ]),
      provenance: { rulebook: { ruleSets: [{ name: 'base' }, { name: 'mix-feeder' }] } },
    })
  })
})
