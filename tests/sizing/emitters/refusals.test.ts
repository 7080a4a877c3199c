import { describe, expect, it } from 'vitest'
import {
  catalogOutput,
  condensingShare,
  curveGap,
  curveShortfall,
  decidingRoom,
  effectiveness,
  emitterOutput,
  fanCoilOutput,
  finTubeFlowFactor,
  floorSurface,
  floorWater,
  keptShare,
  lengthForLoad,
  logMeanDifference,
  meanExcess,
  mixedReturn,
  outdoorForReturn,
  requiredWater,
  resetSupply,
  returnAtSupply,
  roomTable,
  roomWater,
  supplyForLoad,
  supplyOnCurve,
  systemSupply,
  tabulatedOutput,
  zoneRunningShare,
} from '../../../src/sizing/emitters/index.js'
import { whyOf } from '../why-of.js'

const rating = { output: 1000, excess: 50, exponent: 1.3 }
const placed = { name: 'R1', rating, air: 293, kept: 1 }
const design = { designOutdoor: 258, balance: 293, room: 293, supply: 343, return: 328, exponent: 1.3 }
const coil = { output: 1e4, water: 355, air: 288, airCapacity: 250, waterCapacity: 900, waterSideShare: 0.3 }

describe('what cannot be', () => {
  it.each([
    [emitterOutput({ rating: { ...rating, output: NaN }, excess: 20, kept: 1 }), 'rated output'],
    [emitterOutput({ rating: { ...rating, exponent: 0.5 }, excess: 20, kept: 1 }), 'exponent'],
    [emitterOutput({ rating, excess: 20, kept: 1.2 }), 'part of the output kept'],
    [requiredWater({ rating: { ...rating, output: 0 }, load: 5, air: 293, kept: 1 }), 'without output'],
    [requiredWater({ rating, load: -5, air: 293, kept: 1 }), 'load'],
    [meanExcess({ supply: 320, return: 330, air: 293, mean: 'arithmetic' }), 'warmer than its supply'],
    [meanExcess({ supply: 320, return: 290, air: 293, mean: 'arithmetic' }), 'cannot heat air'],
    [logMeanDifference({ hotIn: 300, hotOut: 290, coldIn: 295, coldOut: 305 }), 'hot stream enters'],
    [catalogOutput({ load: 1000, factors: [1, 0] }), 'correction 2'],
    [lengthForLoad({ load: 1000, meter: rating, excess: -3, kept: 1 }), 'no length is enough'],
    [mixedReturn([{ flow: 0, temperature: 300 }]), 'Nothing returns'],
    [mixedReturn([{ flow: -1, temperature: 300 }]), 'flow of a return'],
    [supplyForLoad({ rating, air: 293, flowCapacity: 0, load: 5 }), 'heat capacity of the flow'],
    [systemSupply([]), 'without zones'],
    [systemSupply([{ name: 'Z4', rating, air: 293, flowCapacity: -1, load: 5 }]), 'Z4'],
    [returnAtSupply({ rating, air: 293, flowCapacity: 80, supply: 280 }), 'cannot heat air'],
    [zoneRunningShare({ rating, air: 293, flowCapacity: 80, supply: 293, load: 5 }), 'gives nothing'],
    [resetSupply({ ...design, balance: 250 }, 270), 'balance temperature'],
    [resetSupply({ ...design, return: 280 }, 270), 'cannot heat a room'],
    [resetSupply(design, NaN), 'outdoor temperature'],
    [outdoorForReturn({ ...design, exponent: 0.9 }, 320), 'exponent'],
    [supplyOnCurve([], 270), 'without points'],
    [curveGap({ points: [{ outdoor: 258, supply: -1 }], design }, 270), 'supply temperature of a point'],
    [curveShortfall({ points: [], design }), 'without points'],
    [condensingShare({ bins: [], design, condensingReturn: 320 }), 'no hour that needs heat'],
    [condensingShare({ bins: [{ outdoor: 270, hours: -1 }], design, condensingReturn: 320 }), 'hours of a bin'],
    [effectiveness({ transferUnits: 1, capacityRatio: 2 }), 'ratio of the flows'],
    [
      fanCoilOutput({ coil: { ...coil, output: 1e6 }, water: 350, air: 290, waterCapacity: 900 }),
      'more than these flows',
    ],
    [finTubeFlowFactor({ flow: 1, ratedFlow: 0 }), 'rated flow'],
    [floorSurface({ load: 1000, area: 0, room: 293, law: 'en-1264' }), 'area of the floor'],
    [floorWater({ surface: 300, room: 293, law: 'en-1264', resistance: -1 }), 'resistance over the water'],
    [tabulatedOutput({ emitter: 'cast-iron-radiator', size: -1, water: 340 }), 'size of the emitter'],
  ])('is refused by name (%#)', (result, name) => {
    expect(whyOf(result)).toContain(name)
  })

  it('a room that cannot be counted leaves the others', () => {
    const rooms = [
      { name: 'hall', load: 700, emitters: [] },
      { name: 'living', load: 900, emitters: [placed] },
      { name: 'bath', load: 900, emitters: [{ ...placed, name: 'R2', kept: 2 }, placed] },
    ]
    expect(decidingRoom(rooms)).toMatchObject({ name: 'living', uncounted: ['hall', 'bath'] })
    const [hall, living, bath] = roomTable(rooms, 333)
    expect(whyOf(hall!.needed)).toBe('hall has no emitter.')
    expect(living!.needed.sized).toBe(true)
    expect(whyOf(bath!.cover)).toContain('bath, R2: The part of the output kept')
    expect(decidingRoom([])).toBeUndefined()
  })

  it('a room that no water warms is told', () => {
    const small = { ...placed, rating: { ...rating, output: 1 } }
    expect(whyOf(roomWater({ name: 'attic', load: 1e6, emitters: [small, small] }))).toContain('with any water')
  })

  it('what is left is told', () => {
    expect(keptShare([], 'least')).toMatchObject({ value: 1 })
    expect(outdoorForReturn(design, 350)).toMatchObject({ value: 258, valid: false })
  })
})

describe('working', () => {
  it('ends in the value', () => {
    const results = [
      emitterOutput({ rating, excess: 20, kept: 1 }),
      requiredWater({ rating, load: 500, air: 293, kept: 1 }),
      supplyForLoad({ rating, air: 293, flowCapacity: 80, load: 500 }),
      returnAtSupply({ rating, air: 293, flowCapacity: 80, supply: 340 }),
      resetSupply(design, 270),
      outdoorForReturn(design, 320),
      condensingShare({ bins: [{ outdoor: 270, hours: 5 }], design, condensingReturn: 320 }),
      fanCoilOutput({ coil, water: 350, air: 290, waterCapacity: 900 }),
      roomWater({ name: 'living', load: 900, emitters: [placed, placed] }),
    ]
    for (const result of results) {
      expect(result.sized && result.working.at(-1)?.value).toBe(result.sized && result.value)
    }
  })
})
