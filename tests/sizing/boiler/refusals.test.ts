import { describe, expect, it } from 'vitest'
import {
  boilerFlow,
  boilerRise,
  buffer,
  burnerOffTime,
  burnerOnTime,
  burnerShare,
  burnerStarts,
  burnerYear,
  concurrentLoad,
  coolDown,
  cyclesAbove,
  efficiencyAtReturn,
  fuelSaved,
  makerEfficiency,
  outputAtAltitude,
  outputWithOneOut,
  plantTurndown,
  seasonEfficiency,
  shareWithOneOut,
  waterForRun,
} from '../../../src/sizing/boiler/index.js'
import { fuelNamed } from '../../../src/tables/index.js'
import { whyOf } from '../why-of.js'

const cycling = { lowestOutput: 5000, load: 300, volume: 0.04, heatCapacity: 4.1e6, swing: 5 }
const run = { lowestOutput: 5000, load: 300, onTime: 600, heatCapacity: 4.1e6, swing: 5 }
const altitude = { output: 1e4, altitude: 1000, makerTable: [], countedFrom: 'sea' } as const
const line = { designOutdoor: 258, balance: 291 }
const design = { ...line, room: 293, supply: 343, return: 328, exponent: 1.3 }
const curve = [{ return: 303, efficiency: 0.96 }]
const boiler = { fuel: fuelNamed('methane'), excessAir: 0.25, pressure: 101_325, approach: 5, jacketLoss: 0 }
const plant = [{ name: 'B1', lowestOutput: 0, highestOutput: 1e4 }]

describe('what cannot be', () => {
  it.each([
    [burnerOnTime({ ...cycling, volume: 0 }), 'volume of water'],
    [burnerOffTime({ ...cycling, swing: NaN }), 'swing'],
    [burnerStarts({ ...cycling, lowestOutput: -1 }), 'lowest output'],
    [burnerShare({ lowestOutput: 0, load: 1 }), 'lowest output'],
    [waterForRun({ ...run, onTime: -1 }), 'time on'],
    [buffer({ ...run, present: -1 }), 'takes part already'],
    [buffer({ ...run, swing: 0, present: 1 }), 'swing'],
    [outputAtAltitude({ ...altitude, output: -1 }), 'output of the boiler'],
    [outputAtAltitude({ ...altitude, altitude: 1e5 }), 'leaves no input'],
    [outputAtAltitude({ ...altitude, makerTable: [{ altitude: 0, share: 2 }] }), 'table of the maker'],
    [cyclesAbove({ line, designLoad: 0, lowestOutput: 1 }), 'design load'],
    [cyclesAbove({ line: { ...line, balance: 250 }, designLoad: 1, lowestOutput: 1 }), 'balance temperature'],
    [boilerRise({ heat: 1, flow: 0, heatCapacity: 4e6 }), 'flow through the boiler'],
    [boilerFlow({ heat: 1, rise: 0, heatCapacity: 4e6 }), 'rise of the water'],
    [concurrentLoad({ heating: -1, hotWater: 0, priority: true }), 'heating load'],
    [coolDown({ interruption: -1, heatCapacity: 1, conductance: 1, indoor: 293, outdoor: 270 }), 'time without heat'],
    [outputWithOneOut([]), 'without boilers'],
    [plantTurndown(plant), 'lowest output of B1'],
    [shareWithOneOut(plant, 0), 'load'],
    [shareWithOneOut([{ ...plant[0]!, lowestOutput: 2e4 }], 5), 'highest above the lowest output of B1'],
    [makerEfficiency([], 310), 'without points'],
    [makerEfficiency([{ return: 303, efficiency: 1.2 }], 310), 'efficiency of a point'],
    [efficiencyAtReturn({ ...boiler, approach: -1 }, 310), 'approach'],
    [efficiencyAtReturn({ ...boiler, jacketLoss: 2 }, 310), 'jacket loss'],
    [seasonEfficiency({ bins: [], design, curve }), 'no hour that needs heat'],
    [seasonEfficiency({ bins: [{ outdoor: 270, hours: 1 }], design, curve: [] }), 'without points'],
    [seasonEfficiency({ bins: [{ outdoor: 270, hours: 1 }], design: { ...design, balance: 1 }, curve }), 'balance'],
    [fuelSaved({ before: 0.87, after: 0 }), 'efficiency after'],
  ])('is refused by name (%#)', (result, name) => {
    expect(whyOf(result)).toContain(name)
  })

  it('a year says why', () => {
    const fires = { line, designLoad: 1e4, lowestOutput: 2000, highestOutput: 1000 }
    expect(burnerYear({ ...fires, bins: [] })).toMatchObject({ told: false })
    const bins = [{ outdoor: NaN, hours: 5 }]
    expect(burnerYear({ ...fires, highestOutput: 3000, bins })).toMatchObject({ told: false })
  })

  it('there is no rest where the load takes the lowest fire', () => {
    expect(burnerOffTime({ ...cycling, load: 6000 })).toMatchObject({ value: 0 })
    expect(burnerOffTime({ ...cycling, load: 0 })).toMatchObject({ value: Infinity })
  })
})
