import { describe, expect, it } from 'vitest'
import {
  emitterExponent,
  finTubeFactors,
  floorLimit,
  keptOutput,
  normalDegreeDays,
  outdoorDesigns,
  partConductance,
  tabulatedOutputs,
  wallConductance,
} from '../../src/tables/index.js'
import { si } from '../../src/units/index.js'

const rising = (numbers: readonly number[]): boolean => numbers.every((one, at) => at === 0 || one > numbers[at - 1]!)

describe('the tables of emitters', () => {
  it.each(['cast-iron-radiator', 'cast-iron-baseboard'] as const)('%s gives more with warmer water', (emitter) => {
    const rows = tabulatedOutputs(emitter)
    expect(rising(rows.map(({ water }) => water))).toBe(true)
    expect(rising(rows.map(({ output }) => output))).toBe(true)
  })

  it('fin-tube gives more with warmer water and less with warmer air', () => {
    const [water, air] = [finTubeFactors('water'), finTubeFactors('air')]
    expect(rising(water.map(({ factor }) => factor))).toBe(true)
    expect(rising(air.map(({ factor }) => -factor))).toBe(true)
    expect([...water, ...air].filter(({ factor }) => factor === 1)).toHaveLength(2)
  })

  it('a fan coil is straight, everything else bowed', () => {
    const bowed = ['cast-iron-radiator', 'cast-iron-baseboard', 'panel-radiator', 'fin-tube', 'convector'] as const
    expect(emitterExponent('fan-coil')).toBe(1)
    expect(bowed.every((emitter) => emitterExponent(emitter) > 1.2)).toBe(true)
  })

  it.each(['cabinet', 'curtain', 'metallic-paint'] as const)('%s takes something off', (obstacle) => {
    const { least, likely, most } = keptOutput(obstacle)
    expect(rising([0, least, likely, most, 1])).toBe(true)
  })

  it('wood stays cooler than other floors, and no list names what it does not limit', () => {
    expect(floorLimit('wood', 'common-practice')).toBeCloseTo(si('temperature', '80 F'), 9)
    expect(floorLimit('perimeter', 'common-practice')).toBeGreaterThan(floorLimit('occupied', 'common-practice')!)
    expect(floorLimit('wood', 'en-1264')).toBeUndefined()
  })
})

describe('the tables of houses and weather', () => {
  it('walls of younger houses conduct less', () => {
    const walls = ['A', 'E', 'F', 'G', 'H'].map((band) => wallConductance('solid-brick', band)!)
    expect(rising(walls.map((one) => -one))).toBe(true)
    expect(wallConductance('timber-frame', 'H')).toBeUndefined()
  })

  it('glass counts in Btu/h ft2 F', () => {
    expect(partConductance('single-glazing').least).toBeCloseTo(5.678263, 5)
    expect(partConductance('frame-wall-bare').least).toBe(partConductance('frame-wall-bare').most)
  })

  it('the colder figure of a station is the one for more hours', () => {
    const designs = outdoorDesigns('716240')
    const at = (share: number) => designs.find(({ warmer }) => warmer === share)!.temperature
    expect(at(0.996)).toBeLessThan(at(0.99))
    expect(outdoorDesigns('000000')).toEqual([])
  })

  // NOAA, normals 1981-2010: the twelve months of New England sum to its year of 6,606 F days.
  it('months sum to their year', () => {
    const region = normalDegreeDays('new-england')!
    expect(region.months!.reduce((sum, month) => sum + month, 0)).toBeCloseTo(region.year, 9)
    expect(region.year * 1.8).toBeCloseTo(6606, 9)
    expect(normalDegreeDays('nowhere')).toBeUndefined()
  })
})
