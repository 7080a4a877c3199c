import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type FlowEdge,
  type FlowNetwork,
  type NetworkSolution,
  type Pump,
  solveFlowNetwork,
} from '../../../src/sizing/index.js'
import { flowsByLoops } from './other-solver.js'
import { randomNetwork } from './random-network.js'

const water = { density: 983.2, viscosity: 0.000466 }
const pump: Pump = {
  curve: [
    { flow: 0, head: 6 },
    { flow: 5e-4, head: 5 },
    { flow: 1e-3, head: 2 },
    { flow: 1.2e-3, head: 0 },
  ],
  control: { mode: 'constant-speed' },
}

type Solved = Extract<NetworkSolution, { readonly solved: true }>

function solve(network: FlowNetwork): Solved {
  const solution = solveFlowNetwork(network)
  if (!solution.solved) throw new Error(solution.why)
  return solution
}

function whyNot(network: FlowNetwork): string {
  const solution = solveFlowNetwork(network)
  return solution.solved ? 'solved' : solution.why
}

function circuit(zones: readonly Partial<FlowEdge>[], driving: Pump = pump): FlowNetwork {
  const common = { name: 'pipe', part: 'pipe', insideDiameter: 0.0327, length: 14, roughness: 1.5e-6 } as const
  return {
    ...water,
    edges: [
      { name: 'C1', from: 'return', to: 'supply', parts: [common], pump: driving },
      ...zones.map((zone, index) => ({ ...zoneOf(index), ...zone })),
    ],
  }
}

function zoneOf(index: number): FlowEdge {
  return {
    name: `Z${index}`,
    from: 'supply',
    to: 'return',
    parts: [
      { name: 'pipe', part: 'pipe', insideDiameter: 0.0206, length: 30, roughness: 1.5e-6 },
      { name: 'valve', part: 'valve', kv: 6.5 },
    ],
  }
}

const flowOf = (solution: Solved, name: string): number => solution.edge(name)?.flow ?? NaN
const length = fc.double({ min: 1, max: 100, noNaN: true })

describe('flows of any network', () => {
  it('are those that a solver by loops and halving finds', () => {
    fc.assert(
      fc.property(randomNetwork, ({ network, plain }) => {
        const solution = solve(network)
        const other = flowsByLoops(plain)
        fc.pre(other !== undefined)
        const size = Math.max(...other.map(Math.abs))
        for (const [index, { flow }] of solution.edges.entries())
          expect(Math.abs(flow - (other[index] ?? NaN))).toBeLessThanOrEqual(1e-5 * size + 1e-9)
      }),
      { numRuns: 30 },
    )
  })

  it('leave nothing over at nodes and edges', () => {
    fc.assert(
      fc.property(randomNetwork, ({ network }) => {
        const { unbalancedFlow, unbalancedHead } = solve(network)
        // A flow below 2e-11 m3/s is told as nothing, in each edge that meets at a node.
        expect(unbalancedFlow).toBeLessThan(1e-11 + network.edges.length * 2e-11)
        expect(unbalancedHead).toBeLessThan(1e-7)
      }),
      { numRuns: 100 },
    )
  })

  it('fall in a branch, and in all, when its resistance grows', () => {
    fc.assert(
      fc.property(
        fc.array(length, { minLength: 1, maxLength: 6 }),
        fc.double({ min: 1.01, max: 5, noNaN: true }),
        (lengths, more) => {
          const withFirst = (first: number): Solved =>
            solve(
              circuit(
                lengths.map((each, index) => ({
                  parts: [
                    {
                      name: 'pipe',
                      part: 'pipe',
                      insideDiameter: 0.0206,
                      length: index === 0 ? first : each,
                      roughness: 1.5e-6,
                    },
                  ],
                })),
              ),
            )
          const [before, after] = [withFirst(lengths[0] ?? 1), withFirst((lengths[0] ?? 1) * more)]
          expect(flowOf(after, 'Z0')).toBeLessThan(flowOf(before, 'Z0'))
          expect(flowOf(after, 'C1')).toBeLessThan(flowOf(before, 'C1'))
        },
      ),
      { numRuns: 50 },
    )
  })

  it('grow in the common pipe, and fall in the others, when a zone side by side with them opens', () => {
    fc.assert(
      fc.property(fc.array(length, { minLength: 2, maxLength: 6 }), (lengths) => {
        const zones = lengths.map((each) => ({
          parts: [{ name: 'pipe', part: 'pipe', insideDiameter: 0.0206, length: each, roughness: 1.5e-6 } as const],
        }))
        const shut = solve(circuit(zones.map((zone, index) => ({ ...zone, closed: index === zones.length - 1 }))))
        const open = solve(circuit(zones))
        expect(flowOf(open, 'C1')).toBeGreaterThan(flowOf(shut, 'C1'))
        expect(flowOf(open, 'Z0')).toBeLessThan(flowOf(shut, 'Z0'))
      }),
      { numRuns: 50 },
    )
  })

  it('are zero where nothing drives them', () => {
    const { edges } = circuit([{}, {}])
    const still = solve({ ...water, edges: edges.map(({ name, from, to, parts }) => ({ name, from, to, parts })) })
    expect(still.edges.map(({ flow }) => Math.abs(flow) < 1e-9)).toEqual([true, true, true])
  })

  it('are equal in equal zones, and all of them come together in the common pipe', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), (zones) => {
        const solution = solve(circuit(Array.from({ length: zones }, () => ({}))))
        for (let index = 1; index < zones; index++)
          expect(flowOf(solution, `Z${index}`)).toBeCloseTo(flowOf(solution, 'Z0'), 12)
        expect(flowOf(solution, 'Z0') * zones).toBeCloseTo(flowOf(solution, 'C1'), 12)
      }),
    )
  })

  it('do not depend on the order and the direction in which edges are written', () => {
    fc.assert(
      fc.property(randomNetwork, fc.infiniteStream(fc.boolean()), ({ network }, turn) => {
        const turned = network.edges.map((edge) =>
          edge.pump === undefined && turn.next().value ? { ...edge, from: edge.to, to: edge.from } : edge,
        )
        const [one, other] = [solve(network), solve({ ...network, edges: turned.toReversed() })]
        for (const { name, flow } of one.edges) expect(Math.abs(flowOf(other, name))).toBeCloseTo(Math.abs(flow), 9)
      }),
      { numRuns: 50 },
    )
  })

  it('are the same when lengths, bores, curves and viscosity are all scaled to another unit of length', () => {
    // Three times as long, wide and rough, in a fluid whose Reynolds numbers stay: heads grow as the cube of flow says.
    const scaled = (by: number): FlowNetwork => ({
      density: 1000,
      viscosity: 0.001 * by ** 1.5,
      edges: [
        {
          name: 'C1',
          from: 'a',
          to: 'b',
          parts: [],
          pump: {
            curve: pump.curve.map(({ flow, head }) => ({ flow: flow * by ** 2.5, head: head * by })),
            control: pump.control,
          },
        },
        {
          name: 'pipe',
          from: 'b',
          to: 'a',
          parts: [{ name: 'pipe', part: 'pipe', insideDiameter: 0.02 * by, length: 40 * by, roughness: 1e-5 * by }],
        },
      ],
    })
    const [one, three] = [solve(scaled(1)), solve(scaled(3))]
    expect(flowOf(three, 'pipe') / 3 ** 2.5).toBeCloseTo(flowOf(one, 'pipe'), 9)
  })
})

describe('pumps', () => {
  it('hold a set head as far as their curve reaches', () => {
    const held = solve(circuit([{}], { ...pump, control: { mode: 'constant-pressure', setHead: 2 } }))
    expect(held.pumps[0]?.head).toBeCloseTo(2, 9)
    const beyond = solve(circuit([{}], { ...pump, control: { mode: 'constant-pressure', setHead: 5.9 } }))
    expect(beyond.pumps[0]?.head).toBeLessThan(5.9)
    expect(beyond.pumps[0]?.head).toBeCloseTo(solve(circuit([{}])).pumps[0]?.head ?? NaN, 9)
  })

  it('follow the flow from half the set head to all of it', () => {
    const follow = (setHead: number): Solved =>
      solve(
        circuit([{ parts: [{ name: 'k', part: 'square', coefficient: 2e7 }] }], {
          ...pump,
          control: { mode: 'proportional-pressure', setHead },
        }),
      )
    const { head = NaN, flow = NaN } = follow(4).pumps[0] ?? {}
    // The curve meets 4 m between its second and its third point; the line goes there from 2 m.
    const meeting = (flow * 2) / (head - 2)
    expect(meeting).toBeGreaterThan(5e-4)
    expect(meeting).toBeLessThan(1e-3)
    expect(head).toBeLessThan(4)
  })

  it('stand still in a circuit whose check looks the other way, and are checked apart from each other', () => {
    const against = solve(circuit([{ from: 'return', to: 'supply', checked: true }]))
    expect(flowOf(against, 'Z0')).toBe(0)
    expect(against.pumps[0]?.head).toBeCloseTo(6, 6)
    const two = solve({
      ...water,
      edges: [
        { name: 'boiler', from: 'return', to: 'supply', parts: [{ name: 'k', part: 'square', coefficient: 1e8 }] },
        { ...zoneOf(1), checked: true, pump },
        { ...zoneOf(2), checked: true },
      ],
    })
    expect(flowOf(two, 'Z2')).toBe(0)
    expect(flowOf(two, 'Z1')).toBeCloseTo(flowOf(two, 'boiler'), 10)
    const without = solve({
      ...water,
      edges: [
        { name: 'boiler', from: 'return', to: 'supply', parts: [{ name: 'k', part: 'square', coefficient: 1e8 }] },
        { ...zoneOf(1), pump },
        zoneOf(2),
      ],
    })
    expect(flowOf(without, 'Z2')).toBeLessThan(0)
  })

  it('say when they run beyond their curve', () => {
    const wide = circuit([{ parts: [{ name: 'k', part: 'square', coefficient: 1 }] }])
    const short = { curve: pump.curve.slice(0, 2), control: pump.control }
    const edges = wide.edges.map((edge) => (edge.pump === undefined ? edge : { ...edge, parts: [], pump: short }))
    expect(solve({ ...wide, edges }).valid).toBe(false)
    expect(solve(circuit([{}])).valid).toBe(true)
  })
})

describe('what cannot be is named', () => {
  const curveOf = (heads: readonly number[]): Pump => ({
    ...pump,
    curve: heads.map((head, index) => ({ flow: index * 1e-4, head })),
  })
  const oneZone = circuit([{}])
  const withPart = (part: FlowEdge['parts'][number]): FlowNetwork => circuit([{ parts: [part] }])

  it.each([
    ['a rising curve', circuit([{}], curveOf([3, 4, 2])), 'C1: The pump curve rises from 3 m to 4 m.'],
    [
      'a flat curve',
      circuit([{}], curveOf([3, 3])),
      'C1: The pump curve is flat: it does not say where the head ends.',
    ],
    ['a curve of one point', circuit([{}], curveOf([3])), 'C1: A pump curve has at least two points.'],
    [
      'no way round',
      circuit([{ closed: true }]),
      'C1 has no circuit: no open way leads from its outlet back to its inlet.',
    ],
    [
      'a bore of nothing',
      withPart({ name: 'pipe', part: 'pipe', insideDiameter: 0, length: 1, roughness: 0 }),
      'Z0: pipe: The inside diameter of the pipe cannot be 0: it is above zero.',
    ],
    [
      'a valve that lets nothing through',
      withPart({ name: 'ZV1', part: 'valve', kv: 0 }),
      'Z0: ZV1: The flow coefficient of the valve cannot be 0: it is above zero.',
    ],
    ['a name twice', circuit([{ name: 'Z' }, { name: 'Z' }]), 'Two edges are called Z.'],
    ['an edge to itself', circuit([{ to: 'supply' }]), 'Z0 begins and ends at supply.'],
    [
      'a head nowhere',
      { ...oneZone, fixed: [{ node: 'attic', head: 0 }] },
      'No edge leads to attic, whose head is given.',
    ],
    ['a fluid without weight', { ...oneZone, density: 0 }, 'The density cannot be 0: it is above zero.'],
    [
      'a set head below nothing',
      circuit([{}], { ...pump, control: { mode: 'constant-pressure', setHead: -1 } }),
      'C1: The set head of the pump cannot be -1: it is above zero.',
    ],
  ])('%s', (_what, network, why) => {
    expect(whyNot(network)).toBe(why)
  })
})
