import { describe, expect, it } from 'vitest'
import { longestLine, run } from './run.js'

interface Printed {
  readonly advisory: string
  readonly topics: readonly { readonly topic: string; readonly lines: readonly Record<string, unknown>[] }[]
}

const dataOf = async (...words: readonly string[]): Promise<Printed> =>
  JSON.parse((await run(['size', ...words, '--format', 'json'])).out) as Printed

describe('size', () => {
  it('prints each number with a working, in 80 columns, and ends with the caution', async () => {
    const { code, out } = await run(['size', 'seeds/larkspur-lane.yaml'])
    expect(code).toBe(0)
    expect(longestLine(out)).toBeLessThanOrEqual(80)
    expect(out).toMatch(/^tank needed: 8\.\d+ gal/m)
    expect(out).toMatch(/swelling\s+of\s+the\s+water:\s+2\.\d+\s+gal/)
    expect(out).toMatch(/licensed people\s+decide/)
  })

  it('takes one topic', async () => {
    const { topics } = await dataOf('seeds/larkspur-lane.yaml', '--only', 'expansion')
    expect(topics.map(({ topic }) => topic)).toEqual(['expansion'])
  })

  it('takes several topics, in the order of the work', async () => {
    const { topics } = await dataOf('seeds/larkspur-lane.yaml', '--only', 'gas,load')
    expect(topics.map(({ topic }) => topic)).toEqual(['load', 'gas'])
  })

  it('meets a wrong topic with the nearest right one', async () => {
    const { code, err } = await run(['size', 'seeds/minimal.yaml', '--only', 'expantion'])
    expect(code).toBe(2)
    expect(err).toContain('Did you mean "expansion"?')
  })

  it('gives break-evens where little is known, and names what is missing', async () => {
    const { out } = await run(['size', 'seeds/minimal.yaml'])
    expect(out).toMatch(/^tank for every 10 gal of water, 50 F to 180 F, as filled, at sea level: 0\.\d+ gal/m)
    expect(out).toMatch(/^load from which the boiler is no more than 1\.4 times it: 60000 Btu\/h/m)
    expect(out).toMatch(/^cold fill that reaches the top with 4 psi left: at least 17\.44 psi/m)
    expect(out).toContain('Cannot be worked out yet')
    expect(out).toContain('B1.waterVolume')
  })

  it('prints markdown', async () => {
    expect((await run(['size', 'seeds/larkspur-lane.yaml', '--only', 'vent', '--format', 'markdown'])).out).toMatch(
      /^#+ VENT/m,
    )
  })
})
