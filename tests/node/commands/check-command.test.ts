import { describe, expect, it } from 'vitest'
import { filesIn, longestLine, run, today } from './run.js'

const stair = 'seeds/coopers-stair.yaml'
const lane = 'seeds/larkspur-lane.yaml'
const minimal = 'seeds/minimal.yaml'
const visit = 'seeds/first-visit.yaml'

describe('the exit code of check', () => {
  it.each([
    [lane, [], 0],
    [stair, [], 1],
    [visit, [], 3],
    [lane, ['--exit-on', 'open'], 0],
    [stair, ['--exit-on', 'open'], 1],
    [visit, ['--exit-on', 'open'], 3],
    [lane, ['--exit-on', 'failing'], 0],
    [stair, ['--exit-on', 'failing'], 1],
    [visit, ['--exit-on', 'failing'], 0],
    [lane, ['--exit-on', 'never'], 0],
    [stair, ['--exit-on', 'never'], 0],
    [visit, ['--exit-on', 'never'], 0],
    ['seeds/nowhere.yaml', ['--exit-on', 'never'], 2],
  ])('of %s with %j is %i', async (file, options, code) => {
    expect((await run(['check', file, ...options])).code).toBe(code)
  })
})

describe('check', () => {
  it('prints a page of 80 columns that tells the day it was judged on and what was opened', async () => {
    const { out, err } = await run(['check', stair])
    expect(longestLine(out)).toBeLessThanOrEqual(80)
    expect(out).toContain(`judged on ${today}`)
    expect(out).toContain('shared/overlays/saltmarrow.yaml (example of the package)')
    expect(out).toContain('shared/equipment/b120.yaml (example of the package)')
    expect(err).toBe('')
  })

  it('keeps within a narrower page', async () => {
    expect(longestLine((await run(['check', stair], { width: 50 })).out)).toBeLessThanOrEqual(50)
  })

  it('colors a terminal and says the same in words', async () => {
    const plain = await run(['check', stair])
    const colored = await run(['check', stair], { color: true })
    expect(colored.out).toContain('\u001b[')
    // eslint-disable-next-line no-control-regex
    expect(colored.out.replace(/\u001b\[\d+m/g, '')).toBe(plain.out)
  })

  it('keeps JSON pure and the same in two runs', async () => {
    const one = await run(['check', stair, '--format', 'json'])
    const two = await run(['check', stair, '--format', 'json'])
    expect(one.out).toBe(two.out)
    expect(JSON.parse(one.out)).toMatchObject({ outcome: 'failing', provenance: { judgedOn: today } })
    expect(one.err).toContain('opened shared/overlays/saltmarrow.yaml')
  })

  it('prints Markdown', async () => {
    expect((await run(['check', stair, '--format', 'markdown'])).out).toMatch(/^# Cooper's Stair\n/)
  })

  it('judges by another day and in another phase, and keeps the digest of the file', async () => {
    const { out } = await run(['check', lane, '--format', 'json', '--judged-on', '2026-01-31', '--phase', 'survey'])
    const plain = await run(['check', lane, '--format', 'json'])
    const told = JSON.parse(out) as { provenance: { document: string } }
    expect(told).toMatchObject({ provenance: { judgedOn: '2026-01-31', phase: 'survey' } })
    expect(JSON.parse(plain.out)).toMatchObject({ provenance: { document: told.provenance.document, phase: 'final' } })
  })

  it('lists what holds when asked', async () => {
    expect((await run(['check', lane])).out).not.toContain('HOLDS (')
    expect((await run(['check', lane, '--passed'])).out).toMatch(/^HOLDS \(\d+\)$/m)
  })

  it('hears an overlay that stands beside the document before the one of the package', async () => {
    const at = filesIn({
      'house.yaml': 'installation: 1\nname: Here\njurisdiction: { authorities: [saltmarrow] }\n',
      'overlays/saltmarrow.yaml':
        'overlay: saltmarrow\nauthority: { name: The Office Next Door, layer: town }\nwritten: { by: the office, official: true }\nchanges: []\n',
    })
    const { out } = await run(['check', at('house.yaml')])
    expect(out).toContain('The Office Next Door')
    expect(out.replace(/\s+/g, ' ')).toContain('beside the document')
    expect(out).not.toContain('City of Saltmarrow')
  })

  it('hears an overlay that is given, and says when the document does not name it', async () => {
    const { out } = await run(['check', minimal, '--overlay', 'shared/overlays/harrowmere.yaml'])
    expect(out.replace(/\s+/g, ' ')).toContain('Town of Harrowmere (harrowmere, town)')
    expect(out.replace(/\s+/g, ' ')).toContain('not named by the document, so not asked')
  })

  it('tells which authority and which equipment were not found', async () => {
    const at = filesIn({
      'house.yaml':
        'installation: 1\njurisdiction: { authorities: [nowhereville] }\ncomponents: [{ id: B1, kind: boiler, use: equipment/b9 }]\n',
    })
    const { err, code } = await run(['check', at('house.yaml')])
    expect(err).toContain('No overlay "nowhereville" was found.')
    expect(err).toContain('No equipment file "equipment/b9" was found.')
    expect(code).toBe(3)
  })

  it('takes equipment from a folder that is given', async () => {
    const at = filesIn({
      'house.yaml': 'installation: 1\ncomponents: [{ id: B1, kind: boiler, use: equipment/own }]\n',
      'mine/own.yaml': 'equipment: equipment/own\nkind: boiler\nmanual: { title: Own manual, page: 2 }\nmawp: 30 psi\n',
    })
    const { out, err } = await run(['check', at('house.yaml'), '--equipment', at('mine')])
    expect(out.replace(/\s+/g, ' ')).toContain('own.yaml (given)')
    expect(err).toBe('')
  })

  it('loads a plugin from a module', async () => {
    const at = filesIn({
      'labels.mjs':
        "export const labels = { name: 'labels', version: '1.2.0', contract: 1, kinds: [], facts: [], checks: [], rules: {}, sources: {} }\n",
    })
    const { out } = await run(['check', minimal, '--plugin', at('labels.mjs')])
    expect(out).toContain('labels 1.2.0')
  })

  it("asks a host's own rules beside ours, which change nothing", async () => {
    const at = filesIn({
      'own.json': JSON.stringify([
        {
          name: 'shop/warm',
          of: 'boiler',
          conditions: { all: [{ fact: 'boiler.mawp', operator: 'greaterThan', value: 1 }] },
          event: { type: 'warm' },
        },
        {
          name: 'shop/never',
          of: 'boiler',
          conditions: { all: [{ fact: 'boiler.mawp', operator: 'lessThan', value: 1 }] },
          event: { type: 'never' },
        },
      ]),
    })
    const plain = await run(['check', lane, '--format', 'json'])
    const { out, code } = await run(['check', lane, '--host-rules', at('own.json')])
    expect(code).toBe(plain.code)
    expect(out).toContain('RULES OF YOUR OWN (2)')
    expect(out).toContain('B1: warm (shop/warm)')
    const json = JSON.parse(
      (await run(['check', lane, '--format', 'json', '--host-rules', at('own.json')])).out,
    ) as object
    expect(json).toMatchObject({ ...(JSON.parse(plain.out) as object), faults: [] })
    expect(json).toMatchObject({
      host: [
        { rule: 'shop/warm', result: 'holds' },
        { rule: 'shop/never', result: 'does not hold' },
      ],
    })
  })
})
