import { describe, expect, it } from 'vitest'
import {
  copperFittingLength,
  csstFlow,
  fittingResistance,
  largestPexBore,
  metricCopper,
  metricCoppers,
  pipeNames,
  pipeRoughness,
  type PipeName,
  pipeSize,
  pipeSizes,
  surfaceOf,
  threeKOf,
  twoKOf,
} from '../../src/tables/index.js'
import { si } from '../../src/units/index.js'

const inch = si('length', '1 in')
const inside = (pipe: PipeName, size: number): number => (pipeSize(pipe, size)?.inside ?? NaN) / inch

describe('the table of pipes', () => {
  // 2018 IFGC Table A.5.2 (K and L), ASTM B88 and B306 tables, 2018 IFGC table headers (steel).
  it.each<[PipeName, number, number]>([
    ['copper-K', 0.5, 0.527],
    ['copper-K', 1.25, 1.245],
    ['copper-L', 0.625, 0.666],
    ['copper-L', 1.25, 1.265],
    ['copper-M', 1.5, 1.527],
    ['copper-DWV', 2, 2.041],
    ['steel-40', 0.5, 0.622],
    ['steel-40', 1, 1.049],
    ['stainless-40S', 0.75, 0.824],
  ])('%s %s: %s in', (pipe, size, expected) => expect(inside(pipe, size)).toBeCloseTo(expected, 9))

  // ASME B36.19, 10S, as an open library of fluid formulas carries it.
  it('has thin stainless steel in millimeters', () => {
    const bores = pipeSizes('stainless-10S').map((row) => Number((row.inside * 1000).toFixed(2)))
    expect(bores).toEqual([17.08, 22.48, 27.86, 36.66, 42.76, 54.76])
  })

  // Schedule 80 is recalled: its walls of ASME B36.10, and the same outside as schedule 40.
  it.each([
    [0.5, 0.147],
    [0.75, 0.154],
    [1, 0.179],
    [1.25, 0.191],
    [1.5, 0.2],
    [2, 0.218],
  ])('steel of schedule 80, %s in.: wall %s in', (size, wall) => {
    const pipe = pipeSize('steel-80', size)!
    expect(pipe.outside).toBe(pipeSize('steel-40', size)!.outside)
    expect((pipe.outside - pipe.inside) / 2 / inch).toBeCloseTo(wall, 9)
  })

  it.each(['copper-K', 'copper-L', 'copper-M', 'copper-DWV'] as const)(
    '%s is 1/8 in. wider outside than it is called',
    (pipe) => {
      for (const { outside, size } of pipeSizes(pipe)) expect(outside / inch - size).toBeCloseTo(0.125, 9)
    },
  )

  it.each(pipeNames)('%s grows with its size, and has a wall', (pipe) => {
    const rows = pipeSizes(pipe)
    expect(rows.length).toBeGreaterThan(3)
    for (const [at, row] of rows.entries()) {
      expect(row.inside).toBeLessThan(row.outside)
      expect(row.inside).toBeGreaterThan(rows[at - 1]?.inside ?? 0)
      expect(pipeRoughness(surfaceOf(pipe)).rough).toBeLessThan(0.05 * row.inside)
    }
  })

  it('has walls in the order of their types', () => {
    for (const size of [0.5, 0.75, 1, 1.25, 1.5, 2]) {
      expect(inside('copper-K', size)).toBeLessThan(inside('copper-L', size))
      expect(inside('copper-L', size)).toBeLessThan(inside('copper-M', size))
      expect(inside('steel-80', size)).toBeLessThan(inside('steel-40', size))
    }
  })

  // Published contents for 100 ft; and a job vector, 0.0680 gal for a foot of 1-1/4 type M.
  it.each<[PipeName, number, number]>([
    ['pex', 0.5, 0.92],
    ['pex', 0.75, 1.83],
    ['pex', 1, 3.03],
    ['copper-M', 1.25, 6.8],
  ])('%s %s holds %s gal in 100 ft', (pipe, size, expected) => {
    const content = (Math.PI / 4) * pipeSize(pipe, size)!.inside ** 2 * si('length', '100 ft')
    expect(Math.abs(content / si('volume', '1 gal') / expected - 1)).toBeLessThan(0.006)
  })

  it('has none that is not listed', () => {
    expect([pipeSize('copper-M', 0.7), largestPexBore(3), metricCopper(0.02), csstFlow(20)]).toEqual(
      Array.from({ length: 4 }),
    )
  })
})

describe('the tables of tubes', () => {
  // ASTM F876.
  it.each([
    [0.5, 0.485],
    [0.625, 0.584],
    [0.75, 0.681],
    [1, 0.875],
  ])('PEX %s is at most %s in. wide, and less on average', (size, largest) => {
    expect(largestPexBore(size)! / inch).toBeCloseTo(largest, 9)
    expect(inside('pex', size)).toBeLessThan(largest)
  })

  // ASTM B88M, type B.
  it('has metric copper', () => {
    const bores = metricCoppers.map((tube) => Number((tube.inside * 1000).toFixed(1)))
    expect(bores).toEqual([13, 16, 19.8, 25.6, 32.2, 39, 50.6])
    expect(metricCopper(0.022)?.wall).toBeCloseTo(0.0011, 12)
  })
})

describe('the tables of roughness and fittings', () => {
  it('has the rough end never below the smooth end', () => {
    for (const surface of ['drawn-tube', 'plastic', 'steel', 'corroded-steel', 'cast-iron'] as const) {
      const { smooth, rough } = pipeRoughness(surface)
      expect(rough).toBeGreaterThanOrEqual(smooth)
    }
    expect(pipeRoughness('corroded-steel')).toEqual({ smooth: 0.00015, rough: 0.001 })
    expect(pipeRoughness('plastic').rough).toBeCloseTo(7e-6, 15)
  })

  // Illinois Administrative Code 77-890, Appendix A, Table Q; the trade's list is longer, as it is said to be.
  it('has fittings by length', () => {
    const foot = si('length', '1 ft')
    const state = { list: 'state-code', size: 1.25 } as const
    expect(copperFittingLength({ ...state, fitting: 'elbow90' })! / foot).toBeCloseTo(2, 12)
    expect(copperFittingLength({ ...state, fitting: 'tee-branch' })! / foot).toBeCloseTo(4, 12)
    expect(copperFittingLength({ ...state, size: 0.5, fitting: 'gate-valve' })).toBeUndefined()
    for (const size of [0.5, 0.75, 1, 1.25, 1.5, 2])
      expect(copperFittingLength({ list: 'trade', fitting: 'elbow90', size })).toBeGreaterThan(
        copperFittingLength({ list: 'state-code', fitting: 'elbow90', size })!,
      )
  })

  it('has fittings by resistance', () => {
    expect(fittingResistance('elbow90')).toBe(0.75)
    expect(fittingResistance('globe-valve')).toBe(6)
    expect(twoKOf('globe-valve')).toEqual({ k1: 1500, kInfinite: 4 })
    expect(threeKOf('elbow90-threaded')).toEqual({ k1: 800, ki: 0.14, kd: 4 })
  })
})
