import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { check, demand, findingOf, house, open, rule, town } from './small-rulebook.js'

const red = { 'tank.color': 'red' }
const rules = {
  'tank/red': rule({
    demands: [
      demand('red', 'must', red),
      demand('lined', 'should', { 'tank.lined': 'yes' }),
      demand('safe', 'stop', { 'tank.pressure': { atMost: '30 psi' } }, { locked: 'true' }),
    ],
  }),
}
const good = { color: 'red', lined: 'yes', pressure: '20 psi' }
const named = (...authorities: readonly string[]) => ({ jurisdiction: { authorities } })
const letGo = (more: Readonly<Record<string, unknown>> = {}) => ({ exempt: 'tank/red', clause: '9', ...more })
const wantsBlue = (more: Readonly<Record<string, unknown>> = {}) => ({
  demand: 'tank/red',
  severity: 'must',
  require: { 'tank.color': { oneOf: ['blue'] } },
  nature: 'amendment',
  clause: '2',
  ...more,
})

describe('authorities', () => {
  it('that nobody stated keep the outcome open', () => {
    const rulebook = open(rules)
    expect(check(house(good), rulebook).outcome).toBe('clear')
    const unstated = check(house(good, { jurisdiction: {} }), rulebook)
    expect(unstated.unheard).toHaveLength(1)
    expect(unstated.outcome).toBe('open')
  })

  it('that are named without an overlay are an open question', () => {
    const report = check(house(good, named('elm')), open(rules))
    expect(report.unheard).toMatchObject([{ authority: 'elm' }])
    expect(report.outcome).toBe('open')
  })

  it('have a say only where they are named', () => {
    const rulebook = open(rules, [town('elm', [wantsBlue()])])
    expect(check(house(good), rulebook).outcome).toBe('clear')
    expect(check(house(good, named('elm')), rulebook).outcome).toBe('failing')
    expect(check(house(good, named('elm', 'unknown')), rulebook).outcome).toBe('failing')
    expect(
      check(house({ ...good, color: 'green' }, { jurisdiction: { authorities: ['unknown'] } }), rulebook).outcome,
    ).toBe('failing')
  })

  it('add demands: the finding names who spoke, and the others', () => {
    const rulebook = open(rules, [town('elm', [wantsBlue()], 'false')])
    const finding = findingOf(check(house(good, named('elm')), rulebook), 'tank/red/T1')
    expect(finding?.demands.find((one) => one.spoke)?.by).toEqual({
      id: 'elm',
      name: 'Town of elm',
      official: false,
      writtenBy: 'somebody',
    })
    expect(finding?.demands).toHaveLength(4)
  })

  it('whose lists share nothing leave no way out, and the message says so', () => {
    const list = { 'tank/red': rule({ demands: [demand('list', 'must', { 'tank.color': ['red', 'green'] })] }) }
    const rulebook = open(list, [town('elm', [wantsBlue()])])
    expect(findingOf(check(house(good, named('elm')), rulebook), 'tank/red/T1')?.message).toContain(
      'No choice satisfies all',
    )
  })

  it('say since when, where the date decides', () => {
    const rulebook = open(rules, [
      town('elm', [wantsBlue({ effective: { from: '2024-07-01', by: 'applicationDate' } })]),
    ])
    const on = (applicationDate: string) =>
      check(house(good, { jurisdiction: { authorities: ['elm'], applicationDate } }), rulebook)
    expect(on('2024-06-30').outcome).toBe('clear')
    expect(findingOf(on('2024-07-01'), 'tank/red/T1')?.message).toContain(
      'Demanded since 2024-07-01; before that it would have passed here.',
    )
  })

  it('heard to ask give advice at most', () => {
    expect(() => open(rules, [town('elm', [wantsBlue({ nature: 'verbal-habit' })])])).toThrow(/verbal habit is advice/)
    const rulebook = open(rules, [town('elm', [wantsBlue({ nature: 'verbal-habit', severity: 'advice' })])])
    expect(findingOf(check(house(good, named('elm')), rulebook), 'tank/red/T1')).toMatchObject({ severity: 'advice' })
  })
})

describe('exemptions', () => {
  const blue = { ...good, color: 'blue' }

  it('reach base demands, never locked ones', () => {
    const rulebook = open(rules, [town('elm', [letGo()])])
    expect(check(house(blue, named('elm')), rulebook).outcome).toBe('clear')
    expect(check(house({ ...blue, pressure: '40 psi' }, named('elm')), rulebook).outcome).toBe('failing')
    expect(() => open(rules, [town('elm', [letGo({ of: ['safe'] })])])).toThrow(/locked/)
  })

  it("never reach another authority's demand", () => {
    const rulebook = open(rules, [town('elm', [letGo()]), town('oak', [wantsBlue()])])
    expect(check(house({ ...good, color: 'green' }, named('elm', 'oak')), rulebook).outcome).toBe('failing')
    expect(check(house({ ...good, color: 'green' }, named('elm')), rulebook).outcome).toBe('clear')
  })

  it('that are unknown leave a failing demand undecided', () => {
    const rulebook = open(rules, [town('elm', [letGo({ of: ['red'], when: { 'tank.lined': 'no' } })])])
    const report = check(house({ ...blue, lined: 'unknown' }, named('elm')), rulebook)
    expect(report.findings[0]).toMatchObject({ verdict: 'undecided', severity: 'must' })
    expect(check(house(blue, named('elm')), rulebook).outcome).toBe('failing')
  })

  it('of a file that is not the authority’s own leave binding demands to the office', () => {
    const rulebook = open(rules, [town('elm', [letGo()], 'false')])
    const report = check(house({ ...blue, lined: 'no' }, named('elm')), rulebook)
    expect(report.outcome).toBe('open')
    expect(report.findings[0]?.demands.find((one) => one.id === 'red')?.exempted).toContain('confirm with the office')
    expect(report.findings[0]?.demands.find((one) => one.id === 'lined')?.verdict).toBe('not-applicable')
  })

  it('cite their clause', () => {
    expect(() => open(rules, [town('elm', [{ exempt: 'tank/red' }])])).toThrow(/citation/)
  })
})

describe('laws of overlays', () => {
  const colors = ['red', 'blue', 'green']
  const change: fc.Arbitrary<Readonly<Record<string, unknown>>> = fc.oneof(
    fc
      .record({
        severity: fc.constantFrom('stop', 'must', 'should', 'advice'),
        color: fc.subarray(colors, { minLength: 1 }),
        from: fc.option(fc.constantFrom('2024-01-01', '2025-01-01'), { nil: undefined }),
      })
      .map(({ severity, color, from }) => ({
        demand: 'tank/red',
        severity,
        require: { 'tank.color': color },
        nature: 'amendment',
        clause: '3',
        ...(from === undefined ? {} : { effective: { from, by: 'applicationDate' } }),
      })),
    fc
      .record({ of: fc.constantFrom(undefined, ['red'], ['lined']), lined: fc.constantFrom(undefined, 'yes', 'no') })
      .map(({ of, lined }) =>
        letGo({
          ...(of === undefined ? {} : { of }),
          ...(lined === undefined ? {} : { when: { 'tank.lined': lined } }),
        }),
      ),
  )
  const tank = fc.record({
    color: fc.constantFrom(...colors, 'unknown'),
    lined: fc.constantFrom('yes', 'no', 'unknown'),
    pressure: fc.constantFrom('20 psi', '40 psi', 'unknown'),
  })
  const anyTown = (name: string) =>
    fc
      .tuple(fc.array(change, { maxLength: 2 }), fc.constantFrom('true', 'false'))
      .map(([changes, official]) => town(name, withIds(changes), official))
  const towns = fc.tuple(anyTown('elm'), anyTown('oak'), anyTown('fir'))
  const dated = (fields: Readonly<Record<string, unknown>>, authorities: readonly string[]) =>
    house(fields, { jurisdiction: { authorities, applicationDate: '2024-06-01' } })

  it('their order never matters', () => {
    fc.assert(
      fc.property(towns, tank, fc.shuffledSubarray([0, 1, 2], { minLength: 3 }), (list, fields, order) => {
        const shuffled = order.map((index) => list[index]).filter((one) => one !== undefined)
        const document = dated(fields, ['elm', 'oak', 'fir'])
        const [one, other] = [check(document, open(rules, list)), check(document, open(rules, shuffled))]
        expect(other.findings).toEqual(one.findings)
        expect(other.provenance.rulebook.hash).toBe(one.provenance.rulebook.hash)
      }),
      { numRuns: 300 },
    )
  })

  it('an added demand never makes an outcome clearer, a named exemption never a worse one', () => {
    const rank = { failing: 0, open: 1, clear: 2 } as const
    fc.assert(
      fc.property(towns, tank, (list, fields) => {
        const only = (verb: string) =>
          list.map((one) => ({
            ...one,
            changes: Array.isArray(one.changes) ? one.changes.filter((raw: object) => verb in raw) : [],
          }))
        const bare = rank[check(dated(fields, []), open(rules, list)).outcome]
        expect(
          rank[check(dated(fields, ['elm', 'oak', 'fir']), open(rules, only('demand'))).outcome],
        ).toBeLessThanOrEqual(bare)
        expect(
          rank[check(dated(fields, ['elm', 'oak', 'fir']), open(rules, only('exempt'))).outcome],
        ).toBeGreaterThanOrEqual(bare)
      }),
      { numRuns: 300 },
    )
  })
})

function withIds(changes: readonly Readonly<Record<string, unknown>>[]): readonly Readonly<Record<string, unknown>>[] {
  return changes.map((one, index) => ('demand' in one ? { ...one, id: `n${index}` } : one))
}
