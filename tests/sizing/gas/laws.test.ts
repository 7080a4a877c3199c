import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  altitudeShare,
  clockedInput,
  clockingTime,
  csstCapacity,
  csstDrop,
  flowFactor,
  gasBore,
  gasCapacity,
  gasCapacityHigh,
  gasDemand,
  gasDrop,
  gasOutlet,
  gasPressures,
  gasTree,
  gravityMultiplier,
  localHeatingValue,
  spitzglassCapacity,
} from '../../../src/sizing/gas/index.js'
import { csstFlows, gasFlow } from '../../../src/tables/index.js'
import { numberOf } from '../number-of.js'
import { whyOf } from '../why-of.js'

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true })

const gas = fc.constantFrom(gasFlow('natural-gas'), gasFlow('propane'))
const pipe = fc.record({ insideDiameter: between(0.01, 0.06), length: between(1, 100), gas })
const flow = between(1e-4, 0.02)
const air = 101_353

describe('laws of the low-pressure equation', () => {
  it('flow, drop and bore are inverses of each other', () => {
    fc.assert(
      fc.property(pipe, flow, (run, carried) => {
        const drop = numberOf(gasDrop({ ...run, flow: carried }))
        expect(numberOf(gasCapacity({ ...run, drop })) / carried).toBeCloseTo(1, 9)
        const bore = numberOf(gasBore({ flow: carried, length: run.length, drop, gas: run.gas }))
        expect(bore / run.insideDiameter).toBeCloseTo(1, 9)
      }),
    )
  })

  it('adds up along the pipe, is zero without flow, grows with flow, falls with the bore', () => {
    fc.assert(
      fc.property(pipe, flow, between(1.001, 3), (run, carried, more) => {
        const drop = (change: Partial<typeof run> & { readonly flow?: number }): number =>
          numberOf(gasDrop({ ...run, flow: carried, ...change }))
        expect(drop({ flow: 0 })).toBe(0)
        expect(drop({ length: run.length * more }) / drop({})).toBeCloseTo(more, 9)
        expect(drop({ flow: carried * more })).toBeGreaterThan(drop({}))
        expect(drop({ insideDiameter: run.insideDiameter * more })).toBeLessThan(drop({}))
      }),
    )
  })
})

describe('laws of the high-pressure equation', () => {
  const high = fc.record({ run: pipe, inlet: between(1.1e4, 1e5), share: between(0.01, 0.9) })

  it('what a pipe carries at a drop arrives with that drop', () => {
    fc.assert(
      fc.property(high, ({ run, inlet, share }) => {
        const drop = inlet * share
        const carried = numberOf(gasCapacityHigh({ ...run, inlet, drop, atmosphere: air }))
        const outlet = numberOf(gasOutlet({ ...run, inlet, flow: carried, atmosphere: air }))
        expect(Math.abs(outlet - (inlet - drop))).toBeLessThan(1e-4 * inlet)
      }),
    )
  })

  it('meets the low-pressure equation at small drops within a few percent', () => {
    fc.assert(
      fc.property(pipe, (run) => {
        const at = { ...run, drop: 125 }
        const ratio = numberOf(gasCapacityHigh({ ...at, inlet: 1744, atmosphere: air })) / numberOf(gasCapacity(at))
        expect(Math.abs(ratio - 1)).toBeLessThan(0.03)
      }),
    )
  })
})

describe('other laws', () => {
  it('corrugated tubing: inverse and monotone', () => {
    const run = fc.record({ ehd: fc.constantFrom(...csstFlows.map(({ ehd }) => ehd)), length: between(1, 60) })
    fc.assert(
      fc.property(run, between(1, 1000), between(0.5, 1.6), (tubing, drop, specificGravity) => {
        const at = { ...tubing, specificGravity }
        const carried = numberOf(csstCapacity({ ...at, drop }))
        expect(numberOf(csstDrop({ ...at, flow: carried })) / drop).toBeCloseTo(1, 8)
        expect(numberOf(csstCapacity({ ...at, drop: drop * 2 }))).toBeGreaterThan(carried)
        expect(numberOf(csstDrop({ ...at, flow: 0 }))).toBe(0)
      }),
    )
  })

  it('clocking and its time are inverses; demand times heating value is the input', () => {
    fc.assert(
      fc.property(between(0.001, 1), between(1000, 1e5), between(2e7, 1e8), (volume, input, heatingValue) => {
        const time = numberOf(clockingTime({ volume, input, heatingValue }))
        expect(numberOf(clockedInput({ volume, time, heatingValue })) / input).toBeCloseTo(1, 9)
        expect((numberOf(gasDemand({ input, heatingValue })) * heatingValue) / input).toBeCloseTo(1, 9)
      }),
    )
  })

  it('altitude only takes away, and more so counted from the sea', () => {
    fc.assert(
      fc.property(between(-100, 4500), between(0, 500), (altitude, more) => {
        const share = (height: number, countedFrom: 'sea' | 'two-thousand-feet'): number =>
          numberOf(altitudeShare({ altitude: height, countedFrom }))
        expect(share(altitude + more, 'sea')).toBeLessThanOrEqual(share(altitude, 'sea'))
        expect(share(altitude, 'sea')).toBeLessThanOrEqual(share(altitude, 'two-thousand-feet'))
      }),
    )
  })

  it('all that burns flows through the meter, and no pressure rises along a way', () => {
    const house = fc.array(fc.record({ parent: fc.nat(), length: between(1, 10), input: between(0, 5000) }), {
      minLength: 1,
      maxLength: 7,
    })
    fc.assert(
      fc.property(house, (parts) => {
        const sections = parts.map(({ parent, length, input }, at) => ({
          id: `S${at}`,
          ...(at === 0 ? {} : { after: `S${parent % at}` }),
          length,
          input,
          bore: { insideDiameter: 0.035 },
        }))
        const tree = gasTree(sections)
        if (!tree.ok) throw new Error(tree.why)
        expect(tree.runs[0]!.load).toBeCloseTo(
          parts.reduce((sum, { input }) => sum + input, 0),
          6,
        )
        const supply = { gas: gasFlow('natural-gas'), heatingValue: 3.8e7, delivery: 1744, atmosphere: air }
        const pressures = gasPressures({ sections, ...supply })
        if (!pressures.ok) throw new Error(pressures.why)
        const at = new Map(pressures.ends.map(({ id, pressure }) => [id, numberOf(pressure)]))
        for (const { id, after } of sections)
          expect(at.get(id)).toBeLessThanOrEqual(after === undefined ? 1744 : at.get(after)!)
      }),
    )
  })
})

describe('impossible numbers give a sentence that names the thing', () => {
  const run = { insideDiameter: 0.02, length: 10, gas: gasFlow('natural-gas') }
  const high = { ...run, inlet: 2e4, atmosphere: air }
  it.each([
    ['gas flow', gasDrop({ ...run, flow: -1 })],
    ['inside diameter', gasDrop({ ...run, flow: 1e-3, insideDiameter: 0 })],
    ['drop along', gasCapacity({ ...run, drop: NaN })],
    ['drop along', gasBore({ flow: 1e-3, length: 10, drop: 0, gas: run.gas })],
    ['too narrow', gasOutlet({ ...high, flow: 0.1 })],
    ['too narrow', gasOutlet({ ...high, inlet: 100, flow: 0.005 })],
    ['more than the pressure', gasCapacityHigh({ ...high, drop: 3e4 })],
    ['gas pressure at the inlet', gasOutlet({ ...high, inlet: -5, flow: 1e-3 })],
    ['drop along the tubing', csstCapacity({ ehd: 18, length: 3, specificGravity: 0.6, drop: -1 })],
    ['EHD 17', csstCapacity({ ehd: 17, length: 3, specificGravity: 0.6, drop: 1 })],
    ['specific gravity', csstDrop({ ehd: 18, length: 3, specificGravity: 0, flow: 1 })],
    ['specific gravity', flowFactor({ specificGravity: -1, viscosity: 1e-5 })],
    ['specific gravity of the gas', gravityMultiplier({ table: 0.6, gas: 0 })],
    ['specific gravity', spitzglassCapacity({ insideDiameter: 0.02, length: 3, drop: 100, specificGravity: 0 })],
    ['heating value', gasDemand({ input: 1, heatingValue: 0 })],
    ['time on the watch', clockedInput({ volume: 1, time: 0, heatingValue: 1 })],
    ['gas on the dial', clockingTime({ volume: 0, input: 1, heatingValue: 1 })],
    ['leaves no input', altitudeShare({ altitude: 9000, countedFrom: 'sea' })],
    ['altitude', altitudeShare({ altitude: NaN, countedFrom: 'sea' })],
    ['temperature of the gas', localHeatingValue({ heatingValue: 1, pressure: 0, atmosphere: 1e5, temperature: 0 })],
  ])('%s', (named, sizing) => expect(whyOf(sizing)).toContain(named))
})
