import { describe, expect, it } from 'vitest'
import { longestLine, run } from './run.js'

describe('rules', () => {
  it('lists each rule with severity, subject and phase', async () => {
    const { code, out } = await run(['rules'])
    expect(code).toBe(0)
    expect(longestLine(out)).toBeLessThanOrEqual(80)
    expect(out).toMatch(/^vent\/termination-height +must; ventTermination; from design$/m)
    expect(out).toMatch(/^relief\/way +stop; boiler; from /m)
  })

  it('lists one topic', async () => {
    const { out } = await run(['rules', '--topic', 'vent', '--format', 'json'])
    const lines = JSON.parse(out) as readonly { readonly id: string; readonly topic: string }[]
    expect(lines.length).toBeGreaterThan(1)
    expect(lines.filter(({ topic }) => topic !== 'vent')).toEqual([])
  })

  it('tells what an overlay adds', async () => {
    const argv = ['rules', '--topic', 'vent', '--overlay', 'shared/overlays/saltmarrow.yaml', '--format', 'json']
    expect(JSON.parse((await run(argv)).out)).toContainEqual(
      expect.objectContaining({ id: 'vent/termination-height', by: ['base', 'saltmarrow'] }),
    )
  })

  it('prints Markdown', async () => {
    expect((await run(['rules', '--format', 'markdown'])).out).toMatch(/^# \d+ rules\n/)
  })
})
