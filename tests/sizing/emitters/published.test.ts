import { describe, expect, it } from 'vitest'
import {
  castIronBaseboard,
  castIronRadiator,
  emitterOutput,
  fanCoilOutput,
  finTubeFactor,
  floorOutput,
  floorSurface,
  meanExcess,
  panelRadiator,
  returnForLoad,
  tabulatedOutput,
  withoutHeatingEffect,
} from '../../../src/sizing/emitters/index.js'
import { floorLimit, tabulatedOutputs } from '../../../src/tables/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'
import { within } from '../within.js'

const kelvin = (text: string): number => si('temperature', text)
const celsius = (degrees: number): number => degrees + 273.15
const btu = (power: number): number => power / si('heatRate', '1 Btu/h')
const squareFoot = si('area', '1 ft2')
const foot = si('length', '1 ft')

describe('cast iron against its trade tables', () => {
  // Emission table of a trade handbook, read, from 170 F on; the law with 150 at 170 F is within 1.4 % of every line.
  it.each(tabulatedOutputs('cast-iron-radiator').filter(({ water }) => water > kelvin('169 F')))(
    'radiator with water at $water K',
    ({ water, output }) => {
      const law = emitterOutput({
        rating: castIronRadiator(squareFoot),
        excess: water - kelvin('70 F'),
        kept: 1,
      })
      within(0.014, numberOf(law), output * squareFoot)
    },
  )

  // Trade table with 15 % heating effect, common practice: the power law with 1.27 is within 0.9 %.
  it.each(tabulatedOutputs('cast-iron-baseboard'))('baseboard with water at $water K', ({ water, output }) => {
    const law = emitterOutput({ rating: castIronBaseboard(foot), excess: water - kelvin('65 F'), kept: 1 })
    within(0.009, numberOf(law), output * foot)
  })

  // The straight table gives 50 at 120 F where the law gives 60.9 (60.2 anchored at 215 F): the careful figure.
  it('the table lies 17 to 18 % below the law at 120 F', () => {
    const cast = { emitter: 'cast-iron-radiator', size: squareFoot, water: kelvin('120 F') } as const
    const law = emitterOutput({ rating: castIronRadiator(squareFoot), excess: 50 / 1.8, kept: 1 })
    expect(btu(numberOf(tabulatedOutput(cast)))).toBeCloseTo(50, 6)
    expect(numberOf(tabulatedOutput(cast)) / numberOf(law)).toBeCloseTo(0.821, 2)
  })

  it('outside a table its end is told, and not valid', () => {
    const cold = tabulatedOutput({ emitter: 'cast-iron-baseboard', size: foot, water: kelvin('120 F') })
    expect(btu(numberOf(cold))).toBeCloseTo(390, 6)
    expect(cold).toMatchObject({ valid: false })
  })

  it('without the heating effect a baseboard gives 1/1.15', () => {
    expect(withoutHeatingEffect(castIronBaseboard(foot)).output * 1.15).toBeCloseTo(castIronBaseboard(foot).output, 9)
  })
})

describe('fin-tube', () => {
  // Trade table, common practice: entering air at 45 F 1.22, 70 F 0.95, 100 F 0.65.
  it.each([
    ['45 F', 1.22],
    ['70 F', 0.95],
    ['100 F', 0.65],
  ])('air at %s: %s', (air, factor) => {
    expect(numberOf(finTubeFactor('air', kelvin(air)))).toBeCloseTo(factor, 9)
  })

  it('below the table its first line is told, and not valid', () => {
    expect(finTubeFactor('water', kelvin('90 F'))).toMatchObject({ value: 0.15, valid: false })
  })
})

describe('EN 442', () => {
  // Arithmetic 0.629 and logarithmic 0.579 of the rating at 70/40/20, 8.6 % apart; there the arithmetic mean is not valid.
  it('the two means part at a wide drop', () => {
    const at = (mean: 'arithmetic' | 'logarithmic') =>
      meanExcess({ supply: celsius(70), return: celsius(40), air: celsius(20), mean })
    expect((numberOf(at('arithmetic')) / 50) ** 1.3).toBeCloseTo(0.629, 3)
    expect((numberOf(at('logarithmic')) / 49.833) ** 1.3).toBeCloseTo(0.5792, 3)
    expect(at('arithmetic')).toMatchObject({ valid: false })
    expect(at('logarithmic')).toMatchObject({ valid: true })
  })

  // 60 K against 50 K with 1.3: 1.267, read.
  it('10 K more give 1.267', () => {
    expect(
      numberOf(emitterOutput({ rating: { output: 1, excess: 50, exponent: 1.3 }, excess: 60, kept: 1 })),
    ).toBeCloseTo(1.267, 3)
  })

  it('1000 W of a 1500 W radiator at 0.02 kg/s return at 50.826 C', () => {
    const emitter = { rating: panelRadiator({ output: 1500, exponent: 1.3 }), air: celsius(20), flowCapacity: 83.6 }
    expect(numberOf(returnForLoad({ ...emitter, load: 1000 })) - 273.15).toBeCloseTo(50.8259, 4)
  })
})

describe('fan coil', () => {
  // A coil of 10 kW rated with a drop of 20 F from 180 F, air at 60 F; the table prints neither air flow nor share of the
  // water side. Of eight shares from 0 to 0.5 only 0.2 follows all twelve lines at this air flow: 0.3 misses the last two, by
  // 8.3 and 10.9 %. So the table shows that the form can follow it; it does not prove the share.
  const coil = {
    output: 10_000,
    water: kelvin('180 F'),
    air: kelvin('60 F'),
    airCapacity: 250,
    waterCapacity: 10_000 / (20 / 1.8),
    waterSideShare: 0.2,
  }
  const rated = { coil, water: coil.water, air: coil.air, waterCapacity: coil.waterCapacity }

  it('gives its rating at its rating', () => {
    within(1e-9, numberOf(fanCoilOutput(rated)), 10_000)
  })

  // Trade table, read: factor = (water - 60)/140 for air at 60 F, that is, straight in the difference.
  it.each(['120 F', '140 F', '200 F'])('is straight in the water temperature: %s', (text) => {
    const water = kelvin(text)
    const expected = (10_000 * (water - coil.air)) / (coil.water - coil.air)
    within(1e-9, numberOf(fanCoilOutput({ ...rated, water })), expected)
  })

  // Trade table, read; its flow times drop is off its own heat by up to 6 %, hence 8 %.
  it.each([
    [5, 1.23],
    [10, 1.13],
    [15, 1.06],
    [20, 1],
    [25, 0.95],
    [30, 0.9],
    [35, 0.86],
    [40, 0.82],
    [45, 0.78],
    [50, 0.72],
    [55, 0.69],
    [60, 0.67],
  ])('a drop of %s F gives %s of the rating', (drop, factor) => {
    const waterCapacity = (10_000 * factor) / (drop / 1.8)
    within(0.08, numberOf(fanCoilOutput({ ...rated, waterCapacity })), 10_000 * factor)
  })
})

describe('floors', () => {
  it('85 F in a room at 70 F: 30 Btu/h for a square foot, and back', () => {
    const floor = { room: kelvin('70 F'), law: 'common-practice' } as const
    const heat = numberOf(floorOutput({ ...floor, surface: kelvin('85 F') }))
    expect(btu(heat) * squareFoot).toBeCloseTo(30, 6)
    expect(numberOf(floorSurface({ ...floor, load: heat * 20, area: 20 }))).toBeCloseTo(kelvin('85 F'), 9)
  })

  // EN 1264, recalled: 29 C in a room at 20 C give about 100 W/m2.
  it('29 C in a room at 20 C: 100 W/m2 by EN 1264', () => {
    expect(floorLimit('occupied', 'en-1264')).toBeCloseTo(celsius(29), 9)
    within(0.01, numberOf(floorOutput({ surface: celsius(29), room: celsius(20), law: 'en-1264' })), 100)
  })
})
