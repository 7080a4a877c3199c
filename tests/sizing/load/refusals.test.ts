import { describe, expect, it } from 'vitest'
import {
  airChangeConductance,
  airHeatCapacity,
  billLoad,
  billLoadBand,
  conductanceOfLayers,
  crossCheck,
  energySignature,
  fuelOfYear,
  leakage,
  loadAt,
  loadFromMean,
  loadOfArea,
  loadShare,
  loadSum,
  monthDegreeDays,
  monthMean,
  outputAtRatio,
  outputOverLoad,
  roomLoad,
  variableBase,
  weatherBins,
} from '../../../src/sizing/load/index.js'
import { whyOf } from '../why-of.js'

const bill = { energy: 1e10, otherEnergy: 0, efficiency: 0.8, degreeDays: 800, balance: 291, designOutdoor: 250 }
const room = {
  name: 'attic',
  surfaces: [{ name: 'roof', area: -4, conductance: 0.4, toOutside: 1 }],
  slabEdges: [],
  thermalBridges: 0,
  volume: 40,
  airChange: 1e-4,
  airHeatCapacity: 1208,
}

describe('what cannot be', () => {
  it.each([
    [airChangeConductance({ volume: -1, airChange: 0, airHeatCapacity: 1208 }), 'volume of air'],
    [airHeatCapacity({ altitude: 0, temperature: NaN }), 'air temperature'],
    [airHeatCapacity({ altitude: 1e6, temperature: 293 }), 'lower atmosphere'],
    [leakage({ airChangeAt50: -1, exposure: 'usual' }), '50 Pa'],
    [conductanceOfLayers([]), 'without resistance'],
    [conductanceOfLayers([{ name: 'board', resistance: -1 }]), 'board'],
    [roomLoad(room, { indoor: 293, outdoor: 258 }), 'attic: The area of roof'],
    [roomLoad({ ...room, surfaces: [], volume: NaN }, { indoor: 293, outdoor: 258 }), 'attic: The volume'],
    [roomLoad(room, { indoor: -1, outdoor: 258 }), 'indoor temperature'],
    [billLoad({ ...bill, otherEnergy: 2e10 }), 'Other uses cannot take'],
    [billLoad({ ...bill, degreeDays: 0 }), 'degree days'],
    [loadFromMean({ meanLoad: 8000, meanOutdoor: 292, balance: 291, designOutdoor: 250 }), 'above the mean outdoor'],
    [fuelOfYear({ designLoad: 1, difference: 30, degreeDays: 1, efficiency: 0, correction: 1 }), 'efficiency'],
    [loadOfArea({ load: 1, area: 0, difference: 30 }), 'heated area'],
    [crossCheck({ rooms: 0, bills: 1 }), 'figure from the rooms'],
    [outputOverLoad({ output: 5, load: 0 }), 'load'],
    [outputAtRatio({ load: -5, ratio: 1 }), 'load'],
    [loadShare({ designOutdoor: 290, balance: 290 }, 280), 'balance temperature'],
    [loadAt({ line: { designOutdoor: 258, balance: 290 }, designLoad: -1, outdoor: 280 }), 'design load'],
    [monthDegreeDays({ days: 30, mean: 280, spread: 0, base: 291 }), 'spread of the days'],
    [monthMean({ days: 30, degreeDays: 1e5, spread: 4, base: 291 }), 'A month cannot have'],
  ])('is refused by name (%#)', (result, name) => {
    expect(whyOf(result)).toContain(name)
  })

  it('bands, fits and bins say why', () => {
    expect(loadSum([{ name: 'hall', load: 5, spread: 2 }])).toMatchObject({ banded: false })
    expect(billLoadBand(bill, { efficiency: 0.05, otherEnergy: 0.2, balance: -1, days: 30 })).toMatchObject({
      banded: false,
    })
    expect(
      billLoadBand({ ...bill, efficiency: 2 }, { efficiency: 0, otherEnergy: 0, balance: 0, days: 30 }),
    ).toMatchObject({
      banded: false,
    })
    expect(energySignature([])).toMatchObject({ fitted: false })
    expect(energySignature([{ outdoor: 270, load: NaN }])).toMatchObject({ fitted: false })
    expect(
      energySignature([
        { outdoor: 270, load: 1 },
        { outdoor: 275, load: 2 },
      ]),
    ).toEqual({ fitted: false, why: 'The fuel does not rise as it gets colder: no signature.' })
    expect(weatherBins([{ days: 30, mean: 273, spread: 4, swing: 0 }], 0)).toMatchObject({ binned: false })
    expect(weatherBins([{ days: 30, mean: 273, spread: 4, swing: 0 }], 1e-9)).toMatchObject({ binned: false })
    expect(weatherBins([], 1)).toMatchObject({ binned: true, bins: [] })
    const cold = { days: 30, mean: 270, spread: 4, energy: 1e10 }
    expect(whyOf(variableBase([cold, cold], [290]).balance)).toContain('at least three')
    expect(whyOf(variableBase([{ ...cold, energy: -1 }], [290]).otherUses)).toContain('fuel of a bill')
  })
})
