import { describe, expect, it } from 'vitest'
import { filesIn, longestLine, run } from './run.js'

const height = 'vent/termination-height'
const said = (text: string): string => text.replace(/\s+/g, ' ')

describe('explain', () => {
  it('tells a rule in words with its demands and sources', async () => {
    const { code, out } = await run(['explain', height])
    expect(code).toBe(0)
    expect(longestLine(out)).toBeLessThanOrEqual(80)
    expect(said(out)).toContain('ventTermination.heightAboveGrade is at least 12 in + site.snowLine')
    expect(said(out)).toContain('International Fuel Gas Code (2018) 503.8; required by code; read')
    expect(said(out)).toContain('nobody can exempt from it')
    expect(out).toContain('CAUTION')
  })

  it('lists what it came to when no thing is named', async () => {
    const { out } = await run(['explain', height, 'seeds/larkspur-lane.yaml'])
    expect(out).toMatch(/VT1: holds/)
    expect(out).toContain('Name one of them')
  })

  it('shows evidence, every demand with value and who, and the way that was walked', async () => {
    const { out } = await run(['explain', 'relief/way', 'seeds/coopers-stair.yaml', 'B1'])
    expect(said(out)).toContain('B1, boiler: FAILS (stop)')
    expect(said(out)).toContain('Way B1.supply -> ')
    expect(said(out)).toContain('relief way: blocked; open demanded: does not hold')
  })

  it('says why a date or an unnamed authority keeps a demand out', async () => {
    const house = (applied: string, authorities: string): string =>
      `installation: 1\njurisdiction: { authorities: ${authorities}, applicationDate: ${applied} }\ncomponents:\n  - { id: VR1, kind: ventRun, side: exhaust, material: pvc-solid, work: new }\n`
    const at = filesIn({
      'early.yaml': house('2024-05-01', '[saltmarrow]'),
      'other.yaml': house('2024-05-01', '[]'),
      'open.yaml': house('2024', '[saltmarrow]'),
      'late.yaml': house('2024-07-01', '[saltmarrow]'),
    })
    const rule = 'vent/exhaust-material'
    const early = said((await run(['explain', rule, at('early.yaml'), 'VR1'])).out)
    expect(early).toContain('not in force: from 2024-07-01, by the date of application (here: 2024-05-01)')
    expect(said((await run(['explain', rule, at('late.yaml'), 'VR1'])).out)).toContain('in force: from 2024-07-01')
    expect(said((await run(['explain', rule, at('open.yaml'), 'VR1'])).out)).toContain(
      'cannot be told: from 2024-07-01',
    )
    const other = said(
      (await run(['explain', rule, at('other.yaml'), 'VR1', '--overlay', 'shared/overlays/saltmarrow.yaml'])).out,
    )
    expect(other).toContain('must, City of Saltmarrow: not asked')
  })

  it('tells what is missing', async () => {
    const { out } = await run(['explain', 'relief/discharge-end', 'seeds/minimal.yaml', 'RV1'])
    expect(said(out)).toContain('RV1, relief valve: CANNOT BE TOLD (stop)')
    expect(said(out)).toContain('Missing discharge.end of RV1')
  })

  it('says that a rule waits for a later phase', async () => {
    expect(said((await run(['explain', height, 'seeds/minimal.yaml', '--phase', 'survey'])).out)).toContain(
      'It waits for phase design; the document is in survey.',
    )
  })

  it('explains a thing that may not be listed', async () => {
    expect((await run(['explain', height, 'seeds/minimal.yaml', 'one more ventTermination'])).out).toContain(
      'CANNOT BE TOLD',
    )
  })
})
