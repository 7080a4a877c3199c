import { describe, expect, it } from 'vitest'
import { longestLine, run } from './run.js'

describe('help', () => {
  it.each([
    [['--help']],
    [['check', '--help']],
    [['ask', '--help']],
    [['rules', '--help']],
    [['explain', '--help']],
    [['help', 'check']],
  ])('%j gives examples in 80 columns', async (argv) => {
    const { code, out, err } = await run(argv)
    expect(code).toBe(0)
    expect(err).toBe('')
    expect(out).toContain('Examples:\n  $ hydronic-rulebook')
    expect(longestLine(out)).toBeLessThanOrEqual(80)
  })

  it('names the exit codes', async () => {
    expect((await run(['check', '--help'])).out).toContain('0 clear, 1 failing, 2 could not run, 3 open')
  })

  it('tells the version', async () => {
    const { code, out } = await run(['--version'])
    expect(code).toBe(0)
    expect(out).toMatch(/^\d+\.\d+\.\d+\n$/)
  })
})
