import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  condensingShare,
  curveShortfall,
  emitterOutput,
  floorOutput,
  floorSurface,
  meanExcess,
  mixedReturn,
  outdoorForReturn,
  requiredWater,
  resetReturn,
  resetSupply,
  returnAtSupply,
  returnForLoad,
  roomOutput,
  roomWater,
  supplyForLoad,
  systemSupply,
  zoneRunningShare,
} from '../../../src/sizing/emitters/index.js'
import { numberOf } from '../number-of.js'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const rating = fc.record({ output: number(100, 20_000), excess: number(20, 90), exponent: number(1, 1.5) })
const air = number(280, 300)
const emitter = fc.record({ rating, air, flowCapacity: number(10, 2000) })
const share = number(0.1, 1)

describe('laws of emitters', () => {
  it('warmer water never gives less, none gives nothing', () => {
    fc.assert(
      fc.property(rating, number(-20, 100), number(-20, 100), (of, one, other) => {
        const at = (excess: number): number => numberOf(emitterOutput({ rating: of, excess, kept: 1 }))
        expect(at(Math.max(one, other))).toBeGreaterThanOrEqual(at(Math.min(one, other)))
        expect(at(Math.min(0, one))).toBe(0)
      }),
    )
  })

  it('required water and output are each other backwards', () => {
    fc.assert(
      fc.property(rating, air, number(1, 20_000), share, (of, around, load, kept) => {
        const water = numberOf(requiredWater({ rating: of, load, air: around, kept }))
        expect(numberOf(emitterOutput({ rating: of, excess: water - around, kept })) / load).toBeCloseTo(1, 6)
      }),
    )
  })

  it('the logarithmic mean lies between return and arithmetic mean', () => {
    fc.assert(
      fc.property(air, number(0.01, 60), number(0, 40), (around, above, drop) => {
        const water = { supply: around + above + drop, return: around + above, air: around }
        const log = numberOf(meanExcess({ ...water, mean: 'logarithmic' }))
        expect(log).toBeLessThanOrEqual(numberOf(meanExcess({ ...water, mean: 'arithmetic' })) + 1e-9)
        expect(log).toBeGreaterThanOrEqual(above - 1e-6)
      }),
    )
  })

  it('supply and return of a load leave no residual', () => {
    fc.assert(
      fc.property(emitter, number(0.05, 1.5), (of, part) => {
        const load = of.rating.output * part
        const [supply, back] = [numberOf(supplyForLoad({ ...of, load })), numberOf(returnForLoad({ ...of, load }))]
        expect((of.flowCapacity * (supply - back)) / load).toBeCloseTo(1, 6)
        // With a very small flow the return is the room to the last digit, and the mean is lost with it.
        fc.pre(back - of.air > 0.01)
        const excess = numberOf(meanExcess({ supply, return: back, air: of.air, mean: 'logarithmic' }))
        expect(numberOf(emitterOutput({ rating: of.rating, excess, kept: 1 })) / load).toBeCloseTo(1, 5)
        expect(numberOf(returnAtSupply({ ...of, supply }))).toBeCloseTo(back, 5)
        expect(numberOf(zoneRunningShare({ ...of, supply, load }))).toBeCloseTo(1, 4)
      }),
    )
  })

  it('more flow never asks for warmer supply', () => {
    fc.assert(
      fc.property(emitter, number(1, 4), (of, more) => {
        const load = of.rating.output / 2
        const fast = numberOf(supplyForLoad({ ...of, flowCapacity: of.flowCapacity * more, load }))
        expect(fast).toBeLessThanOrEqual(numberOf(supplyForLoad({ ...of, load })) + 1e-9)
      }),
    )
  })

  it('the supply of a system is enough for each zone, and what one of them needs', () => {
    fc.assert(
      fc.property(fc.array(emitter, { minLength: 1, maxLength: 4 }), (emitters) => {
        const zones = emitters.map((of, at) => ({ ...of, name: `Z${at}`, load: of.rating.output / 2 }))
        const supply = numberOf(systemSupply(zones))
        const each = zones.map((zone) => numberOf(supplyForLoad(zone)))
        expect(each.every((needed) => needed <= supply)).toBe(true)
        expect(each).toContain(supply)
      }),
    )
  })

  it('a room with several emitters gives its load at the water it needs', () => {
    const placed = fc.record({ name: fc.constant('R'), rating, air, kept: share })
    fc.assert(
      fc.property(fc.array(placed, { minLength: 1, maxLength: 4 }), share, (emitters, part) => {
        const most = emitters.reduce((sum, one) => sum + one.rating.output * one.kept, 0)
        const room = { name: 'living', load: most * part, emitters }
        expect(numberOf(roomOutput(room, numberOf(roomWater(room)))) / room.load).toBeCloseTo(1, 6)
      }),
    )
  })

  it('a mixed return lies between the returns, whatever the unit of flow', () => {
    const flow = fc.record({ flow: number(0.001, 10), temperature: number(290, 350) })
    fc.assert(
      fc.property(fc.array(flow, { minLength: 1, maxLength: 6 }), number(0.1, 100), (flows, unit) => {
        const mixed = numberOf(mixedReturn(flows))
        const temperatures = flows.map(({ temperature }) => temperature)
        expect(mixed).toBeGreaterThanOrEqual(Math.min(...temperatures) - 1e-9)
        expect(mixed).toBeLessThanOrEqual(Math.max(...temperatures) + 1e-9)
        const scaled = flows.map((one) => ({ ...one, flow: one.flow * unit }))
        expect(numberOf(mixedReturn(scaled))).toBeCloseTo(mixed, 8)
      }),
    )
  })

  it('a floor and its surface are each other backwards', () => {
    fc.assert(
      fc.property(fc.constantFrom('common-practice', 'en-1264'), number(0, 3000), number(1, 60), (law, load, area) => {
        const surface = numberOf(floorSurface({ load, area, room: 293.15, law }))
        expect(numberOf(floorOutput({ surface, room: 293.15, law })) * area).toBeCloseTo(load, 5)
      }),
    )
  })
})

const design = fc
  .record({
    designOutdoor: number(240, 270),
    balance: number(285, 294),
    supplyAbove: number(10, 70),
    returnShare: number(0.3, 1),
    exponent: number(1, 1.5),
  })
  .map(({ supplyAbove, returnShare, ...rest }) => ({
    ...rest,
    room: 294,
    supply: 294 + supplyAbove,
    return: 294 + supplyAbove * returnShare,
  }))
const outdoor = number(230, 310)

describe('laws of outdoor reset', () => {
  it('colder weather never asks for cooler supply, and stays within design and room', () => {
    fc.assert(
      fc.property(design, outdoor, outdoor, (of, one, other) => {
        const at = (place: number): number => numberOf(resetSupply(of, place))
        expect(at(Math.min(one, other))).toBeGreaterThanOrEqual(at(Math.max(one, other)) - 1e-9)
        expect(at(one)).toBeLessThanOrEqual(of.supply + 1e-9)
        expect(numberOf(resetReturn(of, one))).toBeGreaterThanOrEqual(of.room - 1e-9)
        expect(numberOf(resetReturn(of, one))).toBeLessThanOrEqual(at(one) + 1e-9)
      }),
    )
  })

  it('above the outdoor temperature for a return the return is no warmer', () => {
    fc.assert(
      fc.property(design, number(0, 1), number(0, 1), (of, part, milder) => {
        const target = of.room + part * (of.return - of.room)
        const found = numberOf(outdoorForReturn(of, target))
        expect(numberOf(resetReturn(of, found + milder * (of.balance - found)))).toBeLessThanOrEqual(target + 1e-6)
      }),
    )
  })

  it('a straight line between the ends is never too warm: what emitters need is bowed', () => {
    fc.assert(
      fc.property(design, (of) => {
        const points = [
          { outdoor: of.designOutdoor, supply: of.supply },
          { outdoor: of.balance, supply: of.room },
        ]
        const shortfall = numberOf(curveShortfall({ points, design: of }))
        expect(shortfall).toBeGreaterThanOrEqual(0)
        if (of.exponent === 1) expect(shortfall).toBeCloseTo(0, 6)
        if (of.exponent > 1.05) expect(shortfall).toBeGreaterThan(0)
      }),
    )
  })

  it('a warmer condensing return never condenses less, and the share is a share', () => {
    const bins = fc.array(fc.record({ outdoor: number(240, 280), hours: number(1, 900) }), {
      minLength: 1,
      maxLength: 12,
    })
    fc.assert(
      fc.property(design, bins, number(290, 360), number(290, 360), (of, weather, one, other) => {
        const at = (condensingReturn: number): number =>
          numberOf(condensingShare({ bins: weather, design: of, condensingReturn }))
        expect(at(Math.max(one, other))).toBeGreaterThanOrEqual(at(Math.min(one, other)))
        expect(at(one)).toBeGreaterThanOrEqual(0)
        expect(at(one)).toBeLessThanOrEqual(1)
        expect(at(of.supply + 1)).toBe(1)
      }),
    )
  })
})
