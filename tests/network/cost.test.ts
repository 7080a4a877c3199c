import { describe, expect, it } from 'vitest'
import * as network from '../../src/network/index.js'
import {
  betweenInFlow,
  downstreamOf,
  everyWayPasses,
  firstMet,
  isConnected,
  openNetwork,
  reachedThings,
  reachesWithout,
  upstreamOf,
  type Network,
} from '../../src/network/index.js'
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

/** A ring from the boiler and back to it: twice as many passages as couplings. */
function ring(length: number, gap: readonly string[]): House {
  const couplings = upTo(length).map((index) => `K${index}`)
  return {
    parts: [part('B1', 'boiler', { capped: ['relief', 'condensate'] }), ...couplings.map((id) => part(id, 'coupling'))],
    runs: [{ id: 'L1', path: ['B1.supply', ...couplings, ...gap, 'B1.return'] }],
  }
}

/** A chain to a header, and a check valve behind each of its branches; a header has fewer than a thousand. */
function fan(length: number): House {
  const branches = Math.min(length, 900)
  const couplings = upTo(length).map((index) => `K${index}`)
  const valves = upTo(branches).map((index) => `S${index}`)
  const header = (id: string) => part(id, 'header', { values: { branches } })
  return {
    parts: [
      part('B1', 'boiler', { capped: ['relief', 'condensate'] }),
      header('H1'),
      header('H2'),
      ...couplings.map((id) => part(id, 'coupling')),
      ...valves.map((id) => part(id, 'checkValve')),
    ],
    runs: [
      { id: 'L1', path: ['B1.supply', ...couplings, 'H1.main'] },
      ...valves.map((id, at) => run(`L-${id}`, `H1.branch${at + 1} ${id} H2.branch${at + 1}`)),
      run('L2', 'H2.main B1.return'),
    ],
  }
}

/** A house of about so many passages. */
const shapes: Readonly<Record<string, (passages: number) => House>> = {
  'a chain': (passages) => chain(passages / 2, 'RV1.inlet'),
  'a chain into the unknown': (passages) => chain(passages / 2, 'unknown'),
  'a ring': (passages) => ring(passages / 2, []),
  'a ring with a gap': (passages) => ring(passages / 2, ['unknown']),
  'a ladder': (passages) => ladder(Math.round(passages / 9)),
  'a fan': (passages) => fan(Math.round(passages / 8)),
}

const ends = { from: { component: 'B1', port: 'supply' }, to: { component: 'B1', port: 'return' } } as const
const targets = { isTarget: isKind('checkValve', 'relief', 'pump') }

/** Each question that the network answers, and the passages that it looks at. */
const questions: Readonly<Record<string, (network: Network) => { readonly visited: number }>> = {
  reachesWithout: (network) => reachesWithout(network, water, isKind('relief'), { closing: true, checking: true }),
  everyWayPasses: (network) => everyWayPasses(network, water, isKind('relief'), { passes: isKind('pump') }),
  reachedThings: (network) => reachedThings(network, water, { closing: true }),
  firstMetDownstream: (network) => firstMet(network, ends.from, 'downstream', targets),
  firstMetUpstream: (network) => firstMet(network, ends.to, 'upstream', targets),
  downstreamOf: (network) => downstreamOf(network, ends.from),
  upstreamOf: (network) => upstreamOf(network, ends.to),
  betweenInFlow: (network) => betweenInFlow(network, ends),
  isConnected: (network) => isConnected(network, water),
}

describe('the cost of answers', () => {
  it('is asked of every question that the network answers', () => {
    const asked = Object.keys(questions).map((name) => name.replace(/stream$/, '').replace(/Down$|Up$/, ''))
    const isQuestion = (name: string): boolean => name !== 'openNetwork'
    expect([...new Set(asked)].sort()).toEqual(Object.keys(network).filter(isQuestion).sort())
  })

  describe.each(Object.entries(shapes))('in %s', (_shape, houseOf) => {
    const sizes = [50, 500, 5_000, 50_000] as const
    const networks = sizes.map((passages) => ({ passages, network: networkOf(houseOf(passages)) }))

    it.each(Object.entries(questions))('grows with the passages, not faster: %s', (_name, ask) => {
      const [least = 0, ...more] = networks.map(({ passages, network }) => ask(network).visited / passages)
      for (const each of more) expect(each).toBeLessThanOrEqual(1.5 * least)
    })
  })

  it('draws the ways of what is met only where they are asked for', () => {
    const { sure } = firstMet(networkOf(fan(4_000)), ends.from, 'downstream', targets)
    expect([sure.length, sure[899]?.witness.length]).toEqual([900, 4_003])
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
