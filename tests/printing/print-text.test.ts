import { describe, expect, it } from 'vitest'
import { plainPaint, printText } from '../../src/printing/index.js'
import { finding, height, sample } from './sample-report.js'
import { seedReport, withoutDigests } from './seed-reports.js'

const said = (text: string): string => text.replace(/\s+/g, ' ')
const longest = (text: string): number => Math.max(...text.split('\n').map((line) => line.length))

describe('the page of a seed', () => {
  it.each(['coopers-stair', 'larkspur-lane', 'minimal', 'first-visit'])(
    '%s is as it was read and approved',
    async (name) => {
      const text = await seedReport(name)
      expect(longest(text)).toBeLessThanOrEqual(80)
      await expect(withoutDigests(text)).toMatchFileSnapshot(`snapshots/${name}.txt`)
    },
  )
})

describe('a page', () => {
  const text = printText(sample)

  it('tells one of everything as it was read and approved', async () => {
    await expect(text).toMatchFileSnapshot('snapshots/sample.txt')
  })

  it.each([40, 41, 57, 80, 120])('keeps within %i columns', (width) => {
    expect(longest(printText(sample, { width }))).toBeLessThanOrEqual(width)
  })

  it('is never narrower than 40 columns', () => {
    expect(printText(sample, { width: 3 })).toBe(printText(sample, { width: 40 }))
  })

  it('begins with the name, the headline and a caution, and ends with the advisory', () => {
    const lines = text.trimEnd().split('\n')
    expect(lines[0]).toMatch(/^Sample House +phase final, judged on 2025-09-20$/)
    expect(lines[1]).toBe(sample.headline)
    expect(lines[2]).toMatch(/^Advice, a self-check, no approval/)
    expect(lines.at(-1)).toBe(sample.advisory)
  })

  it('puts what must be fixed before firing first', () => {
    const headings = text.split('\n').filter((line) => /^[A-Z][A-Z ,:?]+( \(\d+\))?$/.test(line))
    expect(headings.slice(0, 3)).toEqual([
      'MUST FIX BEFORE FIRING (1)',
      'MUST FIX (1)',
      'CANNOT BE TOLD: MUST BE KNOWN (2)',
    ])
  })

  it('never loses a caution', () => {
    for (const { caution = '' } of sample.findings) expect(said(text)).toContain(`CAUTION ${caution}`)
    for (const { finding: accepted } of sample.accepted)
      expect(said(text)).toContain(`CAUTION ${accepted.caution ?? ''}`)
  })

  it('sets number against demand and says how it is known', () => {
    expect(said(text)).toContain('Found height above grade: 14 in; at least 36 in demanded; 22 in too little')
    expect(said(text)).toContain(
      'Known ON AN ASSUMPTION; read on a gauge; equipment file equipment/x (Manual, page 3); evidence P17',
    )
    expect(said(text)).toContain('Found relief way: blocked; open demanded')
  })

  it('says who demands it, by which clause, and who wrote a file that is not the authority’s', () => {
    expect(said(text)).toContain('Asked required by code: Code (2018) 1.2; you state this edition')
    expect(said(text)).toContain(
      'Asked City of Example: amendments 7-14; amendment since 2024-07-01; unofficial: written by a contractor, ask the office',
    )
    expect(said(text)).toContain('this office has been heard to ask')
    expect(said(text)).toContain('Exempt City of Example may let it go (7-15)')
  })

  it('shows other demands that apply and leaves out those that do not', () => {
    expect(said(text)).toContain('Also advice, City of Example: asks 12 in, met (2 in to spare)')
    expect(said(text)).toContain('Also stop, the model code: asks 20 in, cannot be told')
    expect(text).not.toContain('99 in')
  })

  it('tells a walked way as a way and an amount by its terms', () => {
    expect(text).toContain('B1.supply -> ISO1 -> RV1')
    expect(said(text)).toContain('Made of 12 in, 2 in')
  })

  it('tells alike undecided things once', () => {
    expect(said(text)).toContain(
      'Alarms: bath, hall safety/co-alarm Cannot be told: an alarm hangs outside each sleeping area. Missing outsideSleeping of each',
    )
  })

  it('gathers the questions for one more into one block', () => {
    expect(text.match(/ARE THESE COMPLETE\?/g)).toHaveLength(1)
    expect(said(text)).toContain('stop vent run (ventRun) must fixture and opening of VT1')
    expect(text).not.toContain('that is not listed?')
  })

  it('shows ten missing facts in their order and counts the rest', () => {
    const start = text.indexOf('FIND OUT NEXT (12)')
    const block = text.slice(start, text.indexOf('\n\n', start))
    expect(block).toContain('2 more')
    expect(block.match(/X\d+\.field\d+/g)).toEqual(
      sample.missing.slice(1, 11).map(({ subject, fact }) => `${subject}.${fact}`),
    )
  })

  it('tells apart what was accepted, contradicts itself, broke or was not heard', () => {
    expect(said(text)).toContain('by the chief inspector, until 2026-12-31')
    expect(said(text)).toContain('One boiler is said, two are listed.')
    expect(said(text)).toContain('This check broke, so it says nothing. It could have been "must".')
    expect(said(text)).toContain('county is named, but no overlay was opened.')
  })

  it('tells what it rests on', () => {
    expect(said(text)).toContain(
      '9 questions of all severities: 1 met, 2 not met, 4 cannot be told, 1 not applicable; 1 broke; 1 accepted in writing; 3 rules wait for a later phase',
    )
    expect(said(text)).toContain('20 given: 1 shown by a photo, 2 measured, 10 only typed, 4 assumed, 3 from a form')
    expect(said(text)).toContain(
      'UNOFFICIAL, written by a contractor; reviewed by nobody; last verified 2020-01-01, more than two years ago: ask the office what changed',
    )
    expect(said(text)).toContain('document 0123456789ab')
  })

  it('numbers its findings through', () => {
    expect(text.match(/^\d+\. /gm)).toEqual(['1. ', '2. ', '3. '])
  })

  it('says that no overlay was opened', () => {
    const alone = {
      ...sample,
      provenance: { ...sample.provenance, rulebook: { ...sample.provenance.rulebook, overlays: [] } },
    }
    expect(said(printText(alone))).toContain('none was opened: no town or utility was heard')
  })

  it('lists what holds when the report does', () => {
    const passed = [
      {
        rule: 'a/b',
        subject: 'Z9',
        verdict: 'pass' as const,
        evidence: finding.evidence.map((one) => ({ ...one, result: 'holds' as const })),
      },
    ]
    expect(said(printText({ ...sample, passed }))).toContain(
      'HOLDS (1) --------- Z9 a/b Found boiler relief way: blocked',
    )
  })

  it('colors by the table it is given, and only then', () => {
    const marks = {
      ...plainPaint,
      stop: (line: string) => `<stop>${line}</stop>`,
      caution: (line: string) => `<caution>${line}</caution>`,
    }
    const colored = printText(sample, { color: marks })
    expect(colored).toContain('<stop>MUST FIX BEFORE FIRING (1)</stop>')
    expect(colored.replace(/<\/?(stop|caution)>/g, '')).toBe(text)
  })

  it('lets no text steer the terminal or break the page', () => {
    const hostile = {
      ...sample,
      name: `A\u001b[2J\u202e${'x'.repeat(500)}\nB`,
      findings: [{ ...height, message: `\u0007bell\r\n${'y'.repeat(300)}` }],
    }
    const printed = printText(hostile)
    // eslint-disable-next-line no-control-regex
    expect(printed).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/)
    expect(longest(printed)).toBeLessThanOrEqual(80)
  })
})
