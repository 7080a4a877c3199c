import { describe, expect, it } from 'vitest'
import { checkInstallation } from '../../src/check-installation.js'
import type { Report } from '../../src/findings/index.js'
import { applyEdits, isMap, type Edit } from '../../src/model/index.js'
import { openEquipment, openSeed, openTowns } from './open-house.js'

const rulebook = openTowns('harrowmere', 'saltmarrow')
const equipment = openEquipment()

function check(house: unknown, edits: readonly Edit[] = []): Report {
  const edited = applyEdits(house, edits, rulebook.model)
  if (!edited.ok) throw new Error(edited.problems.map((problem) => problem.message).join(' '))
  return checkInstallation({ ...edited.document, installation: 1 }, rulebook, { equipment, judgedOn: '2025-11-01' })
}

const told = (report: Report): readonly string[] =>
  report.findings.map(({ severity, verdict, key }) => `${severity} ${verdict} ${key}`)
const under = (authority: string, applicationDate: string): readonly Edit[] => [
  { set: 'jurisdiction.authorities', to: [authority] },
  { set: 'jurisdiction.applicationDate', to: applicationDate },
]

describe('Larkspur Lane, the clean house', () => {
  const house = openSeed('larkspur-lane')

  it('is clear under Harrowmere; one alarm lacks its photo', () => {
    const report = check(house)
    expect(report.outcome).toBe('clear')
    expect(told(report).filter((line) => !line.startsWith('advice'))).toEqual([
      'should undecided safety/co-alarm/hall-2',
    ])
    expect(report.missing).toMatchObject([
      { subject: 'CO3', fact: 'evidence' },
      { subject: 'water', fact: 'hardness' },
    ])
  })

  it('gets advice on its size, its turndown, its bare old main and the hardness of its water', () => {
    const advice = told(check(house)).filter((line) => line.startsWith('advice'))
    expect(advice.filter((line) => !line.includes('main-insulation'))).toEqual([
      'advice fail boiler/turndown/B1',
      'advice fail boiler/size/installation',
      'advice undecided water/hardness/water',
    ])
    expect(advice.filter((line) => line.includes('main-insulation'))).toHaveLength(8)
  })

  it('fails seven rules under Saltmarrow by 2025, five by 2024, and is open on alarm interconnection in both years', () => {
    const fails2024 = [
      'must fail vent/termination-height/VT1',
      'must fail vent/termination-height/VT2',
      'must fail boiler/low-water/B1',
      'must fail hot-water/outlet-limit/FX-shower',
      'must fail hot-water/outlet-limit/FX-shower-2',
      'must fail hot-water/outlet-limit/FX-tub',
      'must fail tests/gas-piping/GT1',
      'must fail tests/heating-piping/HT1',
    ]
    const rules = (lines: readonly string[]): number =>
      new Set(lines.map((line) => line.split(' ')[2]?.split('/').slice(0, 2).join('/'))).size
    const binding = (applicationDate: string): readonly string[] =>
      told(check(house, under('saltmarrow', applicationDate))).filter((line) => line.startsWith('must'))
    const open = 'must undecided safety/co-alarm/hall-2'
    expect([...binding('2024-05-15')].sort()).toEqual([...fails2024, open].sort())
    expect(rules(fails2024)).toBe(5)
    const fails2025 = [
      ...fails2024,
      'must fail vent/exhaust-material/VR1',
      'must fail safety/emergency-switch/installation',
    ]
    expect([...binding('2025-09-03')].sort()).toEqual([...fails2025, open].sort())
    expect(rules(fails2025)).toBe(7)
  })

  it('gives the reason of each difference: who, how much, since when', () => {
    const report = check(house, under('saltmarrow', '2025-09-03'))
    const of = (key: string) => report.findings.find((finding) => finding.key === key)
    expect(of('vent/exhaust-material/VR1')?.message).toContain(
      'Demanded since 2024-07-01; before that it would have passed here.',
    )
    expect(of('vent/termination-height/VT1')?.demands.find((one) => one.spoke)).toMatchObject({
      by: { id: 'saltmarrow', official: false },
      value: '36 in',
      margin: '-2 in',
    })
    expect(of('hot-water/outlet-limit/FX-tub')?.demands.find((one) => one.spoke)).toMatchObject({
      value: '115 F',
      margin: '-3 F',
    })
    expect(of('safety/co-alarm/hall-2')?.missing).toContainEqual({ subject: 'CO3', fact: 'interconnected' })
  })

  it('keeps old pipe until the appliance goes', () => {
    const kept: readonly Edit[] = [...under('saltmarrow', '2025-09-03'), { set: 'VR1.work', to: 'kept' }]
    expect(told(check(house, kept))).toContain('must fail vent/exhaust-material/VR1')
    expect(told(check(house, [...kept, { set: 'B1.work', to: 'kept' }]))).not.toContain(
      'must fail vent/exhaust-material/VR1',
    )
    expect(told(check(house, [...kept, { set: 'B1.work', to: 'unknown' }]))).toContain(
      'must undecided vent/exhaust-material/VR1',
    )
  })

  it('accepts an approved modification exactly as far as it goes', () => {
    const withApproval = (limit: string, more: Readonly<Record<string, string>> = {}): Report => {
      const approved = [
        {
          rule: 'vent/termination-height',
          subject: 'VT1',
          accepts: { 'ventTermination.heightAboveGrade': { atLeast: limit } },
          by: 'the building official',
          evidence: ['P8'],
          ...more,
        },
      ]
      return check({ ...(isMap(house) ? house : {}), approved }, under('saltmarrow', '2025-09-03'))
    }
    expect(told(withApproval('34 in'))).not.toContain('must fail vent/termination-height/VT1')
    expect(withApproval('34 in').accepted).toMatchObject([
      { by: 'the building official', finding: { key: 'vent/termination-height/VT1' } },
    ])
    expect(withApproval('34 in').tally.accepted).toBe(1)
    expect(told(withApproval('35 in'))).toContain('must fail vent/termination-height/VT1')
    expect(told(withApproval('34 in', { expires: '2025-10-01' }))).toContain('must fail vent/termination-height/VT1')
    expect(told(withApproval('34 in', { expires: '2026-10-01' }))).not.toContain(
      'must fail vent/termination-height/VT1',
    )
  })
})

describe("Cooper's Stair, the flawed house", () => {
  const report = check(openSeed('coopers-stair'))

  it('fails with its planted faults 1 to 6 and 8 to 10 and nothing else that binds', () => {
    expect(report.outcome).toBe('failing')
    expect(told(report).filter((line) => line.startsWith('stop') || line.startsWith('must'))).toEqual([
      'stop fail relief/way/B1',
      'must fail vent/length/VR1',
      'must fail condensate/metal-ahead/B1',
      'must fail expansion/pump-suction/C1',
      'must fail backflow/device-class/BFP1',
      'must fail fill/pressure-for-height/FV1',
      'must fail expansion/tank-size/EX1',
      'must fail vent/orphaned-heater/WH1',
      'must fail electrical/transformer-load/TX1',
      // The plate of the small tank does not tell how far its diaphragm may stretch.
      'must undecided expansion/acceptance/EX1',
    ])
  })

  it('fires all ten planted faults', () => {
    const planted = [
      'stop fail relief/way/B1',
      'should fail expansion/pump-away/EX1',
      'must fail fill/pressure-for-height/FV1',
      'must fail expansion/tank-size/EX1',
      'must fail backflow/device-class/BFP1',
      'must fail condensate/metal-ahead/B1',
      'should fail hot-water/tempering/FX-kitchen',
      'must fail electrical/transformer-load/TX1',
      'must fail vent/length/VR1',
      'must fail vent/orphaned-heater/WH1',
    ]
    expect(planted.filter((line) => !told(report).includes(line))).toEqual([])
  })

  it('follows them up with what hangs on them, none of it a stop', () => {
    expect(told(report).filter((line) => line.startsWith('should') || line.startsWith('advice'))).toEqual([
      'should fail expansion/pump-away/EX1',
      'should fail hot-water/outlet-limit/FX-kitchen',
      'should fail hot-water/tempering/FX-kitchen',
      'should fail records/permit-delta/jurisdiction',
      'advice fail boiler/turndown/B1',
      'advice fail boiler/condensing-return/installation',
      'advice fail boiler/size/installation',
      'advice undecided hot-water/first-hour/T1',
    ])
  })

  it('says what to mend first: the relief before all else, the fill pressure before the tank that is sized by it', () => {
    const rules = report.findings.map(({ rule }) => rule)
    const before = (first: string, then: string): boolean => rules.indexOf(first) < rules.indexOf(then)
    expect(rules[0]).toBe('relief/way')
    expect(before('fill/pressure-for-height', 'expansion/tank-size')).toBe(true)
    expect(before('expansion/tank-size', 'expansion/pump-away')).toBe(true)
    expect(before('hot-water/outlet-limit', 'boiler/size')).toBe(true)
  })

  it('is quiet where it is sound', () => {
    const quiet = [
      'gas',
      'hot-water/closed-system',
      'vent/termination-height',
      'vent/exhaust-material',
      'relief/setting',
      'relief/capacity',
      'condensate/neutralizer',
      'safety/co-alarm',
    ]
    expect(report.findings.filter(({ rule }) => quiet.some((start) => rule.startsWith(start)))).toEqual([])
  })

  it('shows its numbers', () => {
    const of = (rule: string) => report.findings.find((finding) => finding.rule === rule)
    expect(of('vent/length')?.message).toContain('79 ft')
    expect(of('vent/length')?.demands[0]).toMatchObject({ value: '70 ft', margin: '-9 ft' })
    expect(of('electrical/transformer-load')?.message).toContain('49.72 VA')
    expect(of('relief/way')?.witness).toEqual(['B1.supply', 'TE1', 'ISO1', 'TE2', 'RV1.inlet'])
    expect(of('fill/pressure-for-height')?.evidence.some(({ value }) => value === '12 psi')).toBe(true)
  })
})

describe('half-known houses', () => {
  it('First look finds the relief valve and the top floor', () => {
    const report = check(openSeed('minimal'))
    expect(told(report).filter((line) => line.includes(' fail '))).toEqual([
      'stop fail relief/setting/B1',
      'must fail fill/pressure-for-height/FV1',
    ])
  })

  it('Mill Row passes no binding demand on anything assumed', () => {
    const house = openSeed('first-visit')
    const report = check(house, [{ set: 'phase', to: 'final' }])
    expect(report.outcome).toBe('open')
    expect(report.known.assumed).toBeGreaterThan(0)
    expect(told(report).filter((line) => line.includes(' fail '))).toEqual([
      'should fail hot-water/outlet-limit/FX-sink',
    ])
    expect(told(report)).toContain('must undecided fill/pressure-for-height/FV1')
  })

  it('Mill Row has a short list at the first visit, and a long one for a plan', () => {
    const asked = (phase: string): readonly string[] =>
      check(openSeed('first-visit'), [{ set: 'phase', to: phase }]).missing.map(
        ({ subject, fact }) => `${subject}.${fact}`,
      )
    expect(asked('survey')).toEqual(expect.arrayContaining(['building.oldInsulation', 'CF1.area']))
    expect(asked('survey').length).toBeLessThan(asked('design').length / 3)
  })

  it('an empty installation is open, and asks for everything that rules are about', () => {
    const report = checkInstallation({ installation: 1 }, rulebook)
    expect(report.outcome).toBe('open')
    expect(report.tally.pass).toBe(0)
    expect(report.tally.fail).toBe(0)
    const asked = report.findings.filter(({ subject }) => subject.listed).map(({ subject }) => subject.id)
    expect([...new Set(asked)].sort()).toEqual([
      'building',
      'fuel',
      'heatingFluid',
      'installation',
      'jurisdiction',
      'water',
    ])
  })
})
