import { describe, expect, it } from 'vitest'
import { longestLine, run, today } from './run.js'

interface Asked {
  readonly questions: readonly {
    readonly rank: number
    readonly asks: string
    readonly subject: string
    readonly fact: string
    readonly worst: string
    readonly place: string
    readonly answer?: string
  }[]
}

describe('ask', () => {
  it('lists what to find out by place, in 80 columns, and ends with 0', async () => {
    const { code, out } = await run(['ask', 'seeds/minimal.yaml'])
    expect(code).toBe(0)
    expect(longestLine(out)).toBeLessThanOrEqual(80)
    expect(out).toMatch(/^RELIEF \(\d+\)$/m)
    expect(out).toMatch(/RV1\.discharge\.end: plain, threaded, capped, valved +stop$/m)
  })

  it('gathers the questions for things that may not be listed', async () => {
    const { out } = await run(['ask', 'seeds/minimal.yaml'])
    expect(out.match(/HOW MANY ARE THERE\?/g)).toHaveLength(1)
    expect(out.replace(/\s+/g, ' ')).toContain('vent run (ventRun)')
  })

  it('gives the same as data in rank order', async () => {
    const { out, err } = await run(['ask', 'seeds/minimal.yaml', '--format', 'json'])
    const { questions } = JSON.parse(out) as Asked
    expect(questions.map(({ rank }) => rank)).toEqual(questions.map((_, index) => index + 1))
    expect(questions).toContainEqual(
      expect.objectContaining({
        subject: 'RV1',
        fact: 'discharge.end',
        asks: 'value',
        place: 'relief',
        worst: 'stop',
        answer: 'plain, threaded, capped, valved',
      }),
    )
    expect(questions).toContainEqual(
      expect.objectContaining({ subject: 'ventRun', fact: 'count', asks: 'count', place: 'vent' }),
    )
    expect(JSON.parse(out)).toMatchObject({ judgedOn: today })
    expect(err).toBe('')
  })

  it('says who has not been heard', async () => {
    expect((await run(['ask', 'seeds/minimal.yaml'])).out).toContain('No authority is stated')
  })

  it('asks less in an earlier phase', async () => {
    const all = JSON.parse(
      (await run(['ask', 'seeds/first-visit.yaml', '--phase', 'service', '--format', 'json'])).out,
    ) as Asked
    const few = JSON.parse(
      (await run(['ask', 'seeds/first-visit.yaml', '--phase', 'survey', '--format', 'json'])).out,
    ) as Asked
    expect(few.questions.length).toBeLessThan(all.questions.length)
  })
})
