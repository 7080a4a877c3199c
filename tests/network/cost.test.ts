import { describe, expect, it } from 'vitest'
import { everyWayPasses, openNetwork, reachedThings, reachesWithout, type Network } from '../../src/network/index.js'
import { installationOf, networkOf, part, run, type House } from './build.js'
import { isKind, water } from './questions.js'

const boiler = part('B1', 'boiler', { capped: ['return', 'relief', 'condensate'] })
const upTo = (count: number): readonly number[] => Array.from({ length: count }, (_each, index) => index)

/** One line through many couplings to a relief valve: twice as many passages as couplings. */
function chain(length: number, end: string): House {
  const couplings = upTo(length).map((index) => `K${index}`)
  return {
    parts: [boiler, ...couplings.map((id) => part(id, 'coupling')), part('RV1', 'relief')],
    runs: [{ id: 'L1', path: ['B1.supply', ...couplings, end] }],
  }
}

/** Tees side by side, joined rung by rung: the number of simple ways doubles with each rung. */
function ladder(rungs: number): House {
  const tees = upTo(rungs).flatMap((index) => [part(`A${index}`, 'tee'), part(`Z${index}`, 'tee')])
  const rails = upTo(rungs - 1).flatMap((index) =>
    ['A', 'Z'].map((side) => run(`L-${side}${index}`, `${side}${index}.b ${side}${index + 1}.a`)),
  )
  const across = upTo(rungs).map((index) => run(`L-${index}`, `A${index}.branch Z${index}.branch`))
  const last = rungs - 1
  const ends = [run('L-in', 'B1.supply A0.a'), run('L-out', `A${last}.b RV1.inlet`)]
  return { parts: [boiler, ...tees, part('RV1', 'relief')], runs: [...rails, ...across, ...ends] }
}

const costOf = (network: Network): number => {
  const free = reachesWithout(network, water, isKind('relief'), { closing: true })
  const passing = everyWayPasses(network, water, isKind('relief'), { passes: isKind('pump') })
  const reached = reachedThings(network, water, { closing: true })
  return free.visited + passing.visited + reached.visited
}

describe('the cost of answers', () => {
  it.each([50, 500, 5_000, 25_000])('grows with the passages of a chain of %i couplings, not faster', (length) => {
    for (const end of ['RV1.inlet', 'unknown'])
      expect(costOf(networkOf(chain(length, end))) / (2 * length)).toBeLessThan(45)
  })

  it('is not driven up by the number of ways', () => {
    expect(costOf(networkOf(ladder(4_000))) / 4_000).toBeLessThan(1.5 * (costOf(networkOf(ladder(40))) / 40))
  })

  it('shows the whole of a long way', () => {
    const { truth, witness } = reachesWithout(networkOf(chain(25_000, 'RV1.inlet')), water, isKind('relief'))
    expect([truth, witness.length]).toEqual([1, 25_002])
  })

  it('is nothing before the first question, and the drawing is made once', () => {
    const installation = installationOf(chain(3, 'RV1.inlet'))
    const unread = {
      ...installation,
      get things(): never {
        throw new Error('read too early')
      },
    }
    expect(Object.isFrozen(openNetwork(unread))).toBe(true)
    const network = openNetwork(installation)
    expect(network.graph()).toBe(network.graph())
  })
})
