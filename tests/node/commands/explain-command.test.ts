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

  it('shows where the way goes wrong and what would make it right', async () => {
    const { out } = await run(['explain', 'relief/way', 'seeds/coopers-stair.yaml', 'B1'])
    expect(said(out)).toContain('Wrong at ISO1: it can be shut')
    expect(said(out)).toContain('WHAT WOULD MAKE IT RIGHT')
    expect(said(out)).toContain('relief way of B1: open, instead of blocked (stop)')
    expect(said(out)).toContain("Do Screw the relief valve into the boiler's own tapping")
    const tank = said((await run(['explain', 'expansion/tank-size', 'seeds/coopers-stair.yaml', 'EX1'])).out)
    expect(tank).toContain('volume of EX1: at least 28.24 gal, instead of 4.4 gal (must)')
  })

  it('shows what would tell where nobody can, and nothing to mend where the rule holds', async () => {
    const open = said((await run(['explain', 'expansion/acceptance', 'seeds/coopers-stair.yaml', 'EX1'])).out)
    expect(open).toContain('WHAT WOULD TELL --------------- Find out acceptance of EX1: such as 40 gal')
    const clear = (await run(['explain', 'relief/way', 'seeds/larkspur-lane.yaml', 'B1'])).out
    expect(clear).not.toContain('WHAT WOULD')
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
