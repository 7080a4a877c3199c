import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { firstMet, type Direction, type FirstMet, type Network } from '../../src/network/index.js'
import { networkOf, part, run, type House, type Run } from './build.js'
import { forget } from './forget.js'
import { isKind } from './questions.js'
import { anyHouse } from './random-house.js'
import { boiler, house, lines } from './ring-house.js'

const meet = (network: Network, from: string, direction: Direction, ...kinds: readonly string[]): FirstMet => {
  const [component = '', port = ''] = from.split('.')
  return firstMet(network, { component, port }, direction, { isTarget: isKind(...kinds) })
}
const ids = (met: FirstMet['sure']): readonly string[] => met.map(({ thing }) => thing.id).sort()
const told = (answer: FirstMet) => ({ sure: ids(answer.sure), possible: ids(answer.possible), open: answer.open })

describe('what is met first with the flow', () => {
  it('is the pump behind the boiler, and against the flow the check valves before it', () => {
    const network = networkOf(house())
    const pump = meet(network, 'B1.supply', 'downstream', 'pump')
    expect(told(pump)).toEqual({ sure: ['P1'], possible: [], open: false })
    expect(pump.sure[0]?.witness).toEqual(['B1.supply', 'T1', 'P1.in'])
    expect(told(meet(network, 'B1.return', 'upstream', 'checkValve', 'pump')).sure).toEqual(['S1', 'S2'])
    expect(told(meet(network, 'P1.in', 'upstream', 'checkValve', 'boiler')).sure).toEqual(['B1'])
  })

  it('goes round once and does not meet the place where it began', () => {
    expect(told(meet(networkOf(house()), 'B1.supply', 'downstream', 'boiler'))).toEqual({
      sure: [],
      possible: [],
      open: false,
    })
  })

  it('walks no leg in which the water stands', () => {
    expect(told(meet(networkOf(house()), 'B1.supply', 'downstream', 'relief')).sure).toEqual([])
  })

  it('cannot tell the order on a ring without anything that says the direction', () => {
    const ring = [run('L-one', 'S1.b T1 S2.a'), run('L-two', 'S2.b S1.a')]
    const strainers = ['S1', 'S2'].map((id) => part(id, 'strainer'))
    const network = networkOf({ parts: [part('T1', 'tee', { capped: ['branch'] }), ...strainers], runs: ring })
    expect(told(meet(network, 'T1.a', 'downstream', 'strainer'))).toEqual({
      sure: [],
      possible: ['S1', 'S2'],
      open: false,
    })
  })

  it('says nothing of a pipe whose two ends say opposite things', () => {
    const runs = lines.map((line) =>
      line.id === 'L-supply' ? run('L-supply', 'B1.supply T1 P1.out-in H1.main') : line,
    )
    const met = meet(networkOf(house(runs)), 'T1.b', 'downstream', 'pump')
    expect([ids(met.sure), ids(met.possible)]).toEqual([[], ['P1']])
  })

  it('asks what an open end leads to', () => {
    const runs = lines.map((line) => (line.id === 'L-left' ? run('L-left', 'H1.branch1 unknown') : line))
    const met = meet(networkOf(house(runs)), 'B1.supply', 'downstream', 'checkValve')
    expect([ids(met.sure), met.open]).toEqual([['S2'], true])
    expect(met.missing).toContainEqual({ subject: 'L-left', fact: 'path' })
  })

  it('leaves a question where the beginning is not there', () => {
    expect(meet(networkOf(house()), 'B9.supply', 'downstream', 'pump')).toMatchObject({ sure: [], open: true })
  })
})

const questions = ['downstream', 'upstream'] as const
const answers = (whole: House) =>
  questions.flatMap((direction) =>
    ['B1.supply', 'B1.return'].map((from) => meet(networkOf(whole), from, direction, 'pump', 'checkValve', 'tee')),
  )

describe('laws of what is met first', () => {
  it('a line forgotten makes no answer clearer', () => {
    const seen = new Set<string>()
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(), fc.nat()), { minLength: 1, maxLength: 4 }), (steps) => {
        const less = steps.reduce((left, [way, which]) => forget(left, way, which), house())
        for (const [index, after] of answers(less).entries()) {
          const before = answers(house())[index]
          expect(ids(before?.sure ?? [])).toEqual(expect.arrayContaining([...ids(after.sure)]))
          const isSettled = !after.open && after.possible.length === 0
          if (isSettled) expect(told(after)).toEqual(told(before ?? after))
          seen.add(String(isSettled))
        }
      }),
      { numRuns: 400 },
    )
    expect([...seen].sort()).toEqual(['false', 'true'])
  })

  it('a line told backwards, or things told in another order, change nothing', () => {
    fc.assert(
      fc.property(anyHouse('some'), (some) => {
        const turned = { ...some, parts: some.parts.toReversed(), runs: some.runs.map(backwards).toReversed() }
        expect(answers(turned).map(told)).toEqual(answers(some).map(told))
      }),
      { numRuns: 500 },
    )
  })
})

describe('the cost of what is met first', () => {
  it.each([50, 5_000, 25_000])('grows with the passages of a ring of %i couplings, not faster', (length) => {
    const couplings = Array.from({ length }, (_each, index) => `K${index}`)
    const network = networkOf({
      parts: [boiler, ...couplings.map((id) => part(id, 'coupling'))],
      runs: [{ id: 'L1', path: ['B1.supply', ...couplings, 'B1.return'] }],
    })
    expect(meet(network, 'B1.supply', 'downstream', 'boiler').visited / length).toBeLessThan(20)
  })

  it.each([50, 900])('grows with the branches of a header of %i, not faster', (branches) => {
    const each = Array.from({ length: branches }, (_each, index) => index + 1)
    const headers = ['H1', 'H2'].map((id) => part(id, 'header', { values: { branches } }))
    const network = networkOf({
      parts: [boiler, ...headers, ...each.map((number) => part(`P${number}`, 'pump'))],
      runs: [
        run('L-in', 'B1.supply H1.main'),
        run('L-out', 'H2.main B1.return'),
        ...each.map((number) => run(`L${number}`, `H1.branch${number} P${number} H2.branch${number}`)),
      ],
    })
    const met = meet(network, 'B1.supply', 'downstream', 'pump')
    expect([met.sure.length, met.open]).toEqual([branches, false])
    expect(met.visited / branches).toBeLessThan(20)
  })
})

function backwards({ path, ...rest }: Run): Run {
  return { ...rest, path: path.toReversed().map(turned) }
}

function turned(item: string): string {
  const [component, port] = item.split('.')
  const [enter, leave] = port?.split('-') ?? []
  return leave === undefined ? item : `${component}.${leave}-${enter}`
}
