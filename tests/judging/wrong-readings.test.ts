import { describe, expect, it } from 'vitest'
import { check, demand, findingOf, house, open, rule, town } from './small-rulebook.js'

const red = { 'tank.color': 'red' }
const redMust = open({ 'tank/red': rule({ demands: [demand('red', 'must', red)] }) })

describe('counting', () => {
  it('does not take one listed for all', () => {
    const report = check(house({ color: 'red' }, { complete: {} }), redMust)
    expect(report.tally).toMatchObject({ pass: 1, undecided: 1 })
    expect(findingOf(report, 'one-more/one more tank')).toMatchObject({
      severity: 'must',
      verdict: 'undecided',
      message: 'Is there a tank that is not listed?',
    })
    expect(report.outcome).toBe('open')
  })

  it('asks nothing more when the count is met, by kind, by family or by all', () => {
    for (const complete of [{ tank: '1' }, { vessel: '1' }, { all: '1' }]) {
      expect(check(house({ color: 'red' }, { complete }), redMust).outcome).toBe('clear')
    }
  })

  it('finds more listed than stated contradictory', () => {
    const report = check(house({ color: 'red' }, { complete: { tank: '0' } }), redMust)
    expect(report.contradictions[0]?.code).toBe('more-listed')
    expect(report.outcome).toBe('open')
  })

  it('takes none for zero, and an empty document for a question', () => {
    expect(check(house({}, { components: [], complete: {}, none: ['tank'] }), redMust).outcome).toBe('clear')
    expect(check(house({}, { components: [], complete: {} }), redMust).outcome).toBe('open')
  })

  it('asks one more part of each owner whose parts are not counted', () => {
    const tags = open({
      'tag/shows': rule({ subject: 'tag', demands: [demand('low', 'must', { 'tag.shows': { atMost: '30 psi' } })] }),
    })
    const list = [{ id: 'front', shows: '20 psi' }]
    expect(findingOf(check(house({ tags: list }), tags), 'one-more/T1/one more tag')).toMatchObject({
      severity: 'must',
      message: 'Has T1 a tag that is not listed?',
    })
    expect(check(house({ tags: { complete: '1', list } }), tags).outcome).toBe('clear')
  })

  it('counts what refers to a thing between what is sure and what may be', () => {
    const rulebook = open({
      'space/tanks': rule({ subject: 'space', demands: [demand('one', 'must', { 'space.tanks': { atLeast: '1' } })] }),
    })
    const with_ = (room: unknown, count: string) =>
      house({ room }, { complete: { tank: count, space: '1' }, spaces: [{ id: 'cellar' }] })
    expect(check(with_('cellar', '1'), rulebook).outcome).toBe('clear')
    expect(check(with_('unknown', '1'), rulebook).outcome).toBe('open')
    expect(
      check(
        house({ room: 'cellar' }, { complete: { tank: '1', space: '2' }, spaces: [{ id: 'cellar' }, { id: 'attic' }] }),
        rulebook,
      ).outcome,
    ).toBe('failing')
    expect(
      check(
        house({ room: 'cellar' }, { complete: { tank: '2', space: '2' }, spaces: [{ id: 'cellar' }, { id: 'attic' }] }),
        rulebook,
      ).outcome,
    ).toBe('open')
  })
})

describe('assumed values', () => {
  const guessed = (value: string) => ({ value, standing: 'assumed' })

  it('decide no binding demand, neither what is required nor when it applies', () => {
    expect(check(house({ color: guessed('red') }), redMust).outcome).toBe('open')
    expect(check(house({ color: guessed('blue') }), redMust).outcome).toBe('open')
    const whenLined = open({
      'tank/red': rule({ when: { 'tank.lined': 'yes' }, demands: [demand('red', 'must', red)] }),
    })
    expect(check(house({ lined: guessed('no'), color: 'blue' }), whenLined).outcome).toBe('open')
    expect(check(house({ lined: 'no', color: 'blue' }), whenLined).outcome).toBe('clear')
  })

  it('decide lesser demands, marked as resting on an assumption', () => {
    const should = open({ 'tank/red': rule({ demands: [demand('red', 'should', red)] }) })
    const report = check(house({ color: guessed('blue') }), should)
    expect(findingOf(report, 'tank/red/T1')).toMatchObject({
      verdict: 'fail',
      severity: 'should',
      restsOn: 'assumption',
    })
  })

  it('make an assumed tank one more that is not listed for binding demands only', () => {
    const both = open({
      'tank/red': rule({ demands: [demand('red', 'must', red), demand('lined', 'should', { 'tank.lined': 'yes' })] }),
    })
    const report = check(house({ color: 'blue', lined: 'no', standing: 'assumed' }), both)
    expect(findingOf(report, 'tank/red/T1')).toMatchObject({ verdict: 'fail', severity: 'should' })
    expect(findingOf(report, 'one-more/one more tank')).toMatchObject({ severity: 'must' })
    expect(report.outcome).toBe('open')
  })
})

describe('bounds', () => {
  const atMost = (limit: string) =>
    open({ 'tank/low': rule({ demands: [demand('low', 'must', { 'tank.measured': { atMost: limit } })] }) })
  const stated = house({ measured: { value: '30 psi', within: '5 psi' } })

  it('are neither a worst case nor a best case', () => {
    expect(check(stated, atMost('36 psi')).outcome).toBe('clear')
    expect(check(stated, atMost('32 psi')).outcome).toBe('open')
    expect(check(stated, atMost('24 psi')).outcome).toBe('failing')
  })

  it('of a statement contain what is computed, or the document contradicts itself', () => {
    const report = check(
      house({ measured: { value: '30 psi', within: '5 psi' }, pressure: '50 psi' }),
      atMost('60 psi'),
    )
    expect(report.contradictions[0]).toMatchObject({ code: 'answer-against-trace', subject: 'T1' })
    expect(report.outcome).toBe('open')
    expect(
      check(house({ measured: { value: '30 psi', within: '5 psi' }, pressure: '33 psi' }), atMost('33.5 psi')).outcome,
    ).toBe('clear')
  })

  it('of a date written as a month decide only outside that month', () => {
    const rulebook = open({ 'tank/red': rule({ demands: [demand('red', 'must', red)] }) }, [
      town('elm', [
        {
          demand: 'tank/red',
          severity: 'must',
          require: { 'tank.color': 'blue' },
          effective: { from: '2024-07-15', by: 'applicationDate' },
          nature: 'amendment',
          clause: '2',
        },
      ]),
    ])
    const on = (applicationDate: string) =>
      check(house({ color: 'red' }, { jurisdiction: { authorities: ['elm'], applicationDate } }), rulebook).outcome
    expect([on('2024-06'), on('2024-07'), on('2024-08'), on('unknown')]).toEqual(['clear', 'open', 'failing', 'open'])
  })
})

describe('lists', () => {
  const noStone = open({
    'tank/liners': rule({ demands: [demand('no-stone', 'must', { 'tank.liners': { excludes: 'stone' } })] }),
  })

  it('with unknown in them exclude nothing for sure, and a member decides at once', () => {
    const of = (liners: unknown) => check(house({ liners }), noStone).outcome
    expect([of(['glass']), of([]), of(['glass', 'unknown']), of(['stone', 'unknown']), of('unknown')]).toEqual([
      'clear',
      'clear',
      'open',
      'failing',
      'open',
    ])
  })
})

describe('severities', () => {
  it('that could be worse keep the outcome open', () => {
    const rulebook = open({
      'tank/two': rule({ demands: [demand('lined', 'should', { 'tank.lined': 'yes' }), demand('red', 'must', red)] }),
    })
    const report = check(house({ lined: 'no' }), rulebook)
    expect(findingOf(report, 'tank/two/T1')).toMatchObject({ verdict: 'fail', severity: 'should', couldBe: 'must' })
    expect(report.outcome).toBe('open')
  })

  it('of two failing demands: the worst speaks', () => {
    const rulebook = open({
      'tank/two': rule({ demands: [demand('lined', 'should', { 'tank.lined': 'yes' }), demand('red', 'stop', red)] }),
    })
    const finding = findingOf(check(house({ lined: 'no', color: 'blue' }), rulebook), 'tank/two/T1')
    expect(finding?.severity).toBe('stop')
    expect(finding?.demands.map(({ id, spoke }) => [id, spoke])).toEqual([
      ['lined', false],
      ['red', true],
    ])
  })

  it('a demand that holds passes though nobody knows whether it applies', () => {
    const rulebook = open({
      'tank/red': rule({ when: { 'tank.lined': 'yes' }, demands: [demand('red', 'must', red)] }),
    })
    expect(check(house({ color: 'red' }), rulebook).outcome).toBe('clear')
    expect(check(house({ color: 'blue' }), rulebook).outcome).toBe('open')
  })
})

describe('broken rules', () => {
  it('are told as broken, never as a verdict, and the rest goes on', () => {
    const rulebook = open({
      'tank/red': rule({ demands: [demand('red', 'must', red)] }),
      'tank/throws': rule({ demands: [demand('fails', 'must', { 'tank.fails': 'no' })] }),
    })
    const report = check(house({ color: 'red' }), rulebook)
    expect(report.broken).toEqual([
      { rule: 'tank/throws', subject: 'T1', severity: 'must', error: 'a fact that throws' },
    ])
    expect(report.tally).toMatchObject({ pass: 1, broken: 1 })
    expect(report.outcome).toBe('open')
  })
})

describe('phases', () => {
  it('leave later rules unasked and say how many', () => {
    const rulebook = open({ 'tank/red': rule({ from: 'final', demands: [demand('red', 'must', red)] }) })
    expect(check(house({ color: 'blue' }, { phase: 'design' }), rulebook).tally).toMatchObject({ asked: 0, later: 1 })
    expect(check(house({ color: 'blue' }, { phase: 'final' }), rulebook).outcome).toBe('failing')
    expect(check(house({ color: 'blue' }), rulebook).outcome).toBe('failing')
  })
})

describe('photos', () => {
  const shown = open({ 'tank/red': rule({ demands: [demand('red', 'must', red, { proof: 'photo' })] }) })
  const evidence = [
    { id: 'P1', type: 'photo' },
    { id: 'S1', type: 'scan' },
  ]

  it('are asked of what is required, of the thing as a whole or of the value', () => {
    const of = (fields: Readonly<Record<string, unknown>>) => check(house(fields, { evidence }), shown).outcome
    expect(of({ color: 'red' })).toBe('open')
    expect(of({ color: 'blue' })).toBe('open')
    expect(of({ color: { value: 'red', evidence: ['P1'] } })).toBe('clear')
    expect(of({ color: 'red', evidence: ['P1'] })).toBe('clear')
    expect(of({ color: { value: 'red', evidence: ['S1'] } })).toBe('open')
    expect(of({ color: { value: 'blue', evidence: ['P1'] } })).toBe('failing')
  })

  it('that are missing are what is asked for', () => {
    expect(check(house({ color: 'red' }, { evidence }), shown).missing).toMatchObject([
      { subject: 'T1', fact: 'evidence', decides: 1 },
    ])
  })
})
