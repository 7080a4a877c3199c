import { describe, expect, it } from 'vitest'
import {
  airCushionTank,
  atmosphericPressure,
  diaphragmTank,
  enoughFor,
  fillPressure,
  fluidExpansion,
  highestPressure,
  hotPressure,
  liftTemperature,
  netExpansion,
  pipeVolume,
  potableTank,
  pressureTag,
  systemVolume,
  tankAcceptance,
  tankByStateRule,
  tankSpread,
  tankWithReserve,
  usualReliefMargin,
} from '../../../src/sizing/expansion/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'
import { whyOf } from '../why-of.js'

const pressures = { fill: 1e5, highest: 2e5, atmosphere: 1e5 }
const tank = { volume: 0.04, precharge: 1e5, ...pressures }

describe('impossible numbers give a sentence that names the thing', () => {
  it.each([
    ['altitude', atmosphericPressure(NaN)],
    ['lower atmosphere', atmosphericPressure(50_000)],
    ['cold temperature', fluidExpansion({ fluid: 'water', cold: -1, hot: 300 })],
    [
      'part of glycol',
      fluidExpansion({ fluid: { glycol: 'propylene-glycol', volumeFraction: 1.2 }, cold: 280, hot: 300 }),
    ],
    ['growth of the pipe', netExpansion({ swelling: 0.02, pipe: -1, rise: 10 })],
    ['inside diameter', pipeVolume({ insideDiameter: 0, length: 1 })],
    ['radiators', systemVolume([{ name: 'radiators', least: 2, likely: 1, most: 3 }]).likely],
    ['boiler', systemVolume([{ name: 'boiler', least: -1, likely: 1, most: 3 }]).most],
    ['density', fillPressure({ height: 3, density: 0, margin: 0 })],
    ['relief valve', highestPressure({ setting: 1000, margin: usualReliefMargin, above: 0, density: 1000 })],
    ['highest pressure', diaphragmTank({ expansion: 0.01, ...pressures, highest: 1e5 })],
    ['swelling', airCushionTank({ expansion: -0.01, ...pressures })],
    ['air charge', tankWithReserve({ expansion: 0.01, reserve: 0, precharge: 3e5, highest: 2e5, atmosphere: 1e5 })],
    ['no swelling', tankByStateRule({ systemVolume: 0.3, hot: 300, ...pressures })],
    ['volume of the tank', tankAcceptance({ ...tank, volume: 0 })],
    ['acceptance limit', tankAcceptance({ ...tank, limit: -1 })],
    ['air in the tank', hotPressure({ ...tank, expansion: 0.05 })],
    ['content of the system', liftTemperature({ systemVolume: 0, fluid: 'water', cold: 283, tank })],
    ['swelling', enoughFor({ tank, swelling: 0 })],
    ['spread', tankSpread({ systemVolume: 0.3, spread: 2, swelling: 0.03, ...pressures }).high],
    ['stored water', potableTank({ stored: -1, cold: 280, hot: 330, supply: 4e5, highest: 6e5, atmosphere: 1e5 })],
  ])('%s', (named, sizing) => expect(whyOf(sizing)).toContain(named))
})

describe('tanks as they are found', () => {
  it('the limit of the maker holds, less what the tank took when cold', () => {
    // Charge 1 bar, filled to 1.5 bar: the air keeps 0.04 * 2 / 2.5 = 0.032, so 0.008 of the limit of 0.012 is used up.
    const found = { ...tank, fill: 1.5e5, highest: 4e5 }
    expect(numberOf(tankAcceptance(found))).toBeCloseTo(0.032 - (0.032 * 2.5) / 5, 12)
    expect(numberOf(tankAcceptance({ ...found, limit: 0.012 }))).toBeCloseTo(0.004, 12)
  })

  it('a charge above the fill pressure leaves the tank idle until the system reaches it', () => {
    expect(numberOf(tankAcceptance({ ...tank, precharge: 1.5e5 }))).toBeCloseTo(0.04 * (1 - 2.5 / 3), 12)
    expect(numberOf(tankAcceptance({ ...tank, precharge: 2.5e5 }))).toBe(0)
  })

  it('a tank that is large enough never lets the relief valve lift, and says so', () => {
    const lift = liftTemperature({ systemVolume: 0.1, fluid: 'water', cold: 283.15, tank })
    expect(lift).toMatchObject({ sized: true, value: 373.15, valid: false })
  })

  it('a glycol mixture beyond its published range is not valid', () => {
    const fluid = { glycol: 'propylene-glycol', volumeFraction: 0.35 } as const
    expect(fluidExpansion({ fluid, cold: 250, hot: 350 })).toMatchObject({ sized: true, valid: false })
  })
})

describe('tag at the gauge', () => {
  const at = (temperature: string, pressure: string): { temperature: number; pressure: number } => ({
    temperature: si('temperature', temperature),
    pressure: si('pressure', pressure),
  })

  it('tells charge, cold, hot and relief', () => {
    const lines = pressureTag({
      units: 'ip',
      precharge: si('pressure', '16 psi'),
      relief: si('pressure', '30 psi'),
      cold: at('50 F', '16 psi'),
      hot: [at('140 F', '20.9 psi'), at('170 F', '24.5 psi')],
    })
    expect(lines).toEqual([
      'Air charge of the tank: 16 psi, set while no water presses on it.',
      'Cold, at 50 F: 16 psi.',
      'Hot, at 140 F: 20.9 psi.',
      'Hot, at 170 F: 24.5 psi.',
      'The relief valve opens at 30 psi. A reading that climbs towards it means a tank without air.',
    ])
  })
})
