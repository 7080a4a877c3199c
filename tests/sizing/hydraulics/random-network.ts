import fc from 'fast-check'
import type { FlowEdge, FlowNetwork } from '../../../src/sizing/index.js'
import type { PlainEdge } from './other-solver.js'

/** A network for the library, and the same laws written out for the other solver. */
export interface BothNetworks {
  readonly network: FlowNetwork
  readonly plain: readonly PlainEdge[]
}

const density = 983.2
const gravity = 9.80665

/** Passive edges between few nodes, a ring so that everything hangs together, and pumps that run in some of them. */
export const randomNetwork: fc.Arbitrary<BothNetworks> = fc.integer({ min: 2, max: 5 }).chain((nodes) => {
  const place = fc.integer({ min: 0, max: nodes - 1 })
  const law = fc.record({
    coefficient: fc.double({ min: 1e8, max: 1e10, noNaN: true }),
    kv: fc.option(fc.double({ min: 0.5, max: 10, noNaN: true }), { nil: undefined }),
    pump: fc.option(
      fc.record({
        shutOff: fc.double({ min: 1, max: 8, noNaN: true }),
        bend: fc.double({ min: 1e6, max: 1e8, noNaN: true }),
      }),
      { nil: undefined, freq: 3 },
    ),
  })
  const ring = Array.from({ length: nodes }, (_, at) => fc.tuple(fc.constant(at), fc.constant((at + 1) % nodes), law))
  const chords = fc.array(
    fc.tuple(place, place, law).filter(([from, to]) => from !== to),
    { maxLength: 4 },
  )
  return fc.tuple(fc.tuple(...ring), chords).map(([round, across]) => both([...round, ...across]))
})

interface Law {
  readonly coefficient: number
  readonly kv: number | undefined
  readonly pump: { readonly shutOff: number; readonly bend: number } | undefined
}

function both(drawn: readonly (readonly [number, number, Law])[]): BothNetworks {
  const edges = drawn.map(([from, to, law], index) => edgeOf([`n${from}`, `n${to}`], law, `e${index}`))
  const plain = drawn.map(([from, to, law]) => ({ from: `n${from}`, to: `n${to}`, fall: fallOf(law) }))
  return { network: { density, viscosity: 0.000466, edges }, plain }
}

function edgeOf([from, to]: readonly [string, string], { coefficient, kv, pump }: Law, name: string): FlowEdge {
  const parts: FlowEdge['parts'] = [
    { name: 'square', part: 'square', coefficient },
    ...(kv === undefined ? [] : [{ name: 'valve', part: 'valve', kv } as const]),
  ]
  if (pump === undefined) return { name, from, to, parts }
  // A parabola comes back exactly from its points, as long as its head is above zero; the rest of the fall is a part.
  const last = Math.sqrt(pump.shutOff / pump.bend)
  const curve = [0, 0.25, 0.5, 0.75, 1].map((share) => ({
    flow: share * last,
    head: Math.max(0, pump.shutOff - pump.bend * (share * last) ** 2),
  }))
  return { name, from, to, parts, pump: { curve, control: { mode: 'constant-speed' } } }
}

function fallOf({ coefficient, kv, pump }: Law): (flow: number) => number {
  const valve = kv === undefined ? 0 : (3600 / kv) ** 2 * (1e5 / (1000 * gravity))
  return (flow) => (coefficient + valve) * flow * Math.abs(flow) - (pump === undefined ? 0 : plainPump(pump, flow))
}

/** The parabola, straight on beyond its ends as the library says. */
function plainPump({ shutOff, bend }: NonNullable<Law['pump']>, flow: number): number {
  const last = Math.sqrt(shutOff / bend)
  if (flow < 0) return shutOff
  if (flow > last) return -2 * bend * last * (flow - last)
  return shutOff - bend * flow ** 2
}
