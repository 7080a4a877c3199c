import { describe, expect, it } from 'vitest'
import { reachesWithout } from '../../src/network/index.js'
import { networkOf, part, run, type Part, type Run } from './build.js'
import { isKind, reliefFrom } from './questions.js'

const boiler = part('B1', 'boiler', { capped: ['supply', 'return', 'condensate'] })
const house = (parts: readonly Part[], runs: readonly Run[]) =>
  networkOf({ parts: [boiler, part('RV1', 'relief'), ...parts], runs })
const reliefRun = (path: string): Run => run('L-relief', path)

describe('questions and drawings that make no sense', () => {
  it('leave a question where the beginning is not listed', () => {
    const network = house([], [reliefRun('B1.relief RV1.inlet')])
    const ask = (from: Parameters<typeof reachesWithout>[1]) => reachesWithout(network, from, isKind('relief'))
    expect(ask({ component: 'B9', port: 'relief' })).toMatchObject({
      truth: 0,
      missing: [{ subject: 'B9', fact: 'relief' }],
    })
    expect(ask({ component: 'B1', port: 'toString' })).toMatchObject({
      truth: 0,
      missing: [{ subject: 'B1', fact: 'toString' }],
    })
    expect(ask({ component: 'B9', medium: 'gas' })).toMatchObject({
      truth: 0,
      missing: [{ subject: 'B9', fact: 'gas' }],
    })
    expect(ask({ component: 'B9' })).toMatchObject({ truth: 0, missing: [{ subject: 'B9', fact: 'ports' }] })
  })

  it('find nothing where a component has no port in the medium', () => {
    const network = house([], [reliefRun('B1.relief RV1.inlet')])
    expect(reachesWithout(network, { component: 'B1', medium: 'gas' }, isKind('relief')).truth).toBe(-1)
  })

  it('take a port or a component that is not there for unknown', () => {
    for (const path of [
      'B1.relief GHOST RV1.inlet',
      'B1.relief RV1.nozzle',
      'B1.relief L-relief.a RV1.inlet',
      'B1.relief RV1.__proto__',
    ]) {
      const answer = reliefFrom(house([], [reliefRun(path)]))
      expect([path, answer.truth]).toEqual([path, 0])
    }
  })

  it('run through nothing that is no component', () => {
    expect(reliefFrom(house([part('Z1', 'zone')], [reliefRun('B1.relief Z1 RV1.inlet')])).truth).toBe(0)
  })

  it('come to an end in knots', () => {
    const parts = [part('T1', 'tee'), part('T2', 'tee')]
    const knot = [
      'B1.relief T1.a',
      'T1.b T1.branch',
      'T2.a T2.b',
      'T2.a T1.b',
      'T1.a T1.a',
      'T1.a T2.branch',
      'unknown unknown',
      'T1.a',
    ]
    const answer = reliefFrom(
      networkOf({ parts: [boiler, ...parts], runs: knot.map((path, index) => run(`L${index}`, path)) }),
    )
    expect(answer).toMatchObject({ truth: -1, witness: [] })
    expect(answer.visited).toBeLessThan(200)
  })

  it('stand a header that claims a billion branches', () => {
    const parts = [part('H1', 'header', { values: { branches: 1e9 } })]
    const answer = reliefFrom(house(parts, [run('L1', 'B1.relief H1.main')]))
    expect(answer).toMatchObject({ truth: 0, missing: [{ subject: 'H1', fact: 'branch1' }] })
    expect(answer.visited).toBeLessThan(200)
  })
})
