import { describe, expect, it } from 'vitest'
import {
  airCushionTank,
  atmosphericPressure,
  diaphragmTank,
  enoughFor,
  estimatedPart,
  fillPressure,
  fluidExpansion,
  highestPressure,
  hotPressure,
  liftTemperature,
  linearExpansion,
  netExpansion,
  pipeVolume,
  potableTank,
  systemVolume,
  tankAcceptance,
  tankByStateRule,
  tankSpread,
  tankWithReserve,
  usualReliefMargin,
} from '../../../src/sizing/expansion/index.js'
import { waterDensity } from '../../../src/sizing/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'

const psi = (value: number): number => si('pressure', `${value} psi`)
const gallons = (value: number): number => si('volume', `${value} gal`)
const fahrenheit = (value: number): number => si('temperature', `${value} F`)
const feet = (value: number): number => value * si('length', '1 ft')
const inGallons = (cubicMeters: number): number => cubicMeters / gallons(1)
const inPsi = (pascal: number): number => pascal / psi(1)

/** Holds a figure within two percent, as the vectors of the sample houses ask. */
function near(actual: number, expected: number, share = 0.02): void {
  expect(Math.abs(actual / expected - 1), `${actual} against ${expected}`).toBeLessThan(share)
}

const seaLevel = psi(14.7)
const water = (cold: number, hot: number): number =>
  numberOf(fluidExpansion({ fluid: 'water', cold: fahrenheit(cold), hot: fahrenheit(hot) }))
const propylene = (volumeFraction: number, cold: number, hot: number): number =>
  numberOf(
    fluidExpansion({
      fluid: { glycol: 'propylene-glycol', volumeFraction },
      cold: fahrenheit(cold),
      hot: fahrenheit(hot),
    }),
  )

describe('swelling', () => {
  // Vectors of the sizing core; water densities are those of IAPWS SR6-08.
  it.each([
    [50, 170, 0.02655],
    [50, 180, 0.03019],
    [45, 140, 0.01698],
  ])('water from %s F to %s F: %s', (cold, hot, expected) => near(water(cold, hot), expected))

  // Computed from IAPWS-95, 10 C to 90 C and to 100 C.
  it.each([
    [80, 0.02872],
    [90, 0.03563],
    [100, 0.04315],
  ])('water from 10 C to %s C: %s', (hot, expected) =>
    near(numberOf(fluidExpansion({ fluid: 'water', cold: 283.15, hot: hot + 273.15 })), expected, 0.002),
  )

  // Second house, corrected: 0.0458 by mixture densities. Water times 1.30, as job.md had it, is 0.03925: 14 % too little.
  it('35 % propylene glycol from 50 F to 180 F: 0.0458', () => {
    near(propylene(0.35, 50, 180), 0.0458)
    expect(propylene(0.35, 50, 180)).toBeGreaterThan(1.1 * 0.03925)
  })

  // Row 135 of the fault catalogue, corrected from 4.75 % to 4.35 % by Melinder.
  it('50 % propylene glycol from 20 F to 140 F: 4.35 %', () => near(propylene(0.5, 20, 140), 0.0435))

  // ASHRAE handbook example, recalled: 3,000 gal, 40 F to 220 F; the specific volumes are those it prints.
  const net = numberOf(netExpansion({ swelling: 0.01677 / 0.01602 - 1, pipe: linearExpansion.steel, rise: 100 }))
  const handbook = { expansion: gallons(3000) * net, fill: psi(10), highest: psi(25), atmosphere: seaLevel }
  it('3,000 gal: 344 gal diaphragm, 578 gal plain', () => {
    near(inGallons(numberOf(diaphragmTank(handbook))), 344, 0.002)
    near(inGallons(numberOf(airCushionTank(handbook))), 578, 0.002)
  })
})

describe('pressures', () => {
  it('12.05 psia at 5,400 ft (vectors)', () => near(inPsi(numberOf(atmosphericPressure(feet(5400)))), 12.05, 0.003))

  const cold = waterDensity(fahrenheit(50)).value
  const fill = (height: number, density: number, margin: number): number =>
    inPsi(numberOf(fillPressure({ height: feet(height), density, margin: psi(margin) })))

  it('25.5 ft of water and 4 psi: 15.05 psi (vectors)', () => near(fill(25.5, cold, 4), 15.05))
  it('33 ft with a specific gravity of 1.03 and 4 psi: 18.7 psi (second house)', () => {
    const conventional = waterDensity(fahrenheit(60)).value
    near(fill(33, 1.03 * conventional, 4), 18.7)
  })
  it('what lies below the gauge asks for no column', () => near(fill(-10, cold, 4), 4, 1e-9))

  // Corrections, section 3: the larger of 10 % and 3 psi.
  it.each([
    [30, 27],
    [50, 45],
    [20, 17],
  ])('a relief valve of %s psi leaves %s psi', (setting, expected) => {
    const highest = highestPressure({ setting: psi(setting), margin: usualReliefMargin, above: 0, density: 975 })
    expect(inPsi(numberOf(highest))).toBeCloseTo(expected, 9)
  })

  it('a tank below the valve may see the column on top', () => {
    const highest = highestPressure({ setting: psi(30), margin: usualReliefMargin, above: 2, density: 1000 })
    expect(numberOf(highest)).toBeCloseTo(psi(27) + 2 * 9806.65, 6)
  })
})

describe('first house', () => {
  // Contents as printed; the sum there, corrected, is 84.2 gal unrounded. 331 ft2 EDR hold 53.0 gal at the likely 0.16 gal.
  const radiators = estimatedPart({ name: 'radiators', emitter: 'cast-iron-radiator', size: si('area', '331 ft2') })
  const sure = (name: string, volume: number): typeof radiators => {
    const content = gallons(volume)
    return { name, least: content, likely: content, most: content }
  }
  const rest = [11.2, 4.8, 3.0, 2.3, 0.9, 2.4, 2.2, 2.6, 1.4, 0.6].map((volume, at) => sure(`part ${at}`, volume))
  const volume = systemVolume([radiators, ...rest])

  it('content 84.2 gal, radiators 53.0', () => {
    near(inGallons(radiators.likely), 53.0)
    near(inGallons(numberOf(volume.likely)), 84.2)
    expect(volume.likely).toMatchObject({ assumed: ['the content of radiators is estimated'] })
    expect(numberOf(volume.least)).toBeLessThan(numberOf(volume.likely))
    expect(numberOf(volume.likely)).toBeLessThan(numberOf(volume.most))
  })

  // 1.291 in. inside: 0.0680 gal/ft (vectors); 3/4 type M 0.0268 and 1 in. 0.0454 (engineering paper, computed).
  it.each([
    [1.291, 0.068],
    [0.811, 0.0268],
    [1.055, 0.0454],
  ])('%s in. bore: %s gal/ft', (bore, expected) => {
    const pipe = pipeVolume({ insideDiameter: si('length', `${bore} in`), length: feet(1) })
    near(inGallons(numberOf(pipe)), expected, 0.004)
  })

  const swelling = water(50, 170)
  const pressures = { fill: psi(16), highest: psi(27), atmosphere: seaLevel }
  const fitted = { volume: gallons(10.3), precharge: psi(16), limit: gallons(4.6), ...pressures }

  it('tank 8.47 gal (vectors); 9.7 and 7.2 gal at 15 % more and less', () => {
    const { low, likely, high } = tankSpread({ systemVolume: gallons(84.2), spread: 0.15, swelling, ...pressures })
    near(inGallons(numberOf(likely)), 8.47)
    near(inGallons(numberOf(high)), 9.7)
    near(inGallons(numberOf(low)), 7.2)
  })

  it('the gauge reads 20.9 psi at 140 F and 24.5 psi at 170 F', () => {
    const reading = (hot: number): number =>
      inPsi(numberOf(hotPressure({ ...fitted, expansion: gallons(84.2) * water(50, hot) })))
    near(reading(140), 20.9)
    near(reading(170), 24.5)
  })

  it('the fitted tank is enough up to 102 gal', () => {
    // 10.3 gal take up 10.3 * (1 - 30.7 / 41.7) = 2.717 gal; over 0.02655 that is 102.3 gal.
    near(inGallons(numberOf(enoughFor({ tank: fitted, swelling }))), 102.3, 0.003)
  })

  // 45 gal from 45 F to 140 F, 68 psi to 100 psi: 2.74 gal; two tanks of 100 gal, 42 F, 62 psi: 5.1 gal (second house).
  it('potable tank 2.74 gal; second house 5.1 gal', () => {
    const potable = (stored: number, cold: number, supply: number): number =>
      inGallons(
        numberOf(
          potableTank({
            stored: gallons(stored),
            cold: fahrenheit(cold),
            hot: fahrenheit(140),
            supply: psi(supply),
            highest: psi(100),
            atmosphere: seaLevel,
          }),
        ),
      )
    near(potable(45, 45, 68), 2.74)
    near(potable(100, 42, 62), 5.1)
  })
})

describe('second house', () => {
  const systemVolume119 = gallons(119.2)
  const swelling = propylene(0.35, 50, 180)
  const to = (fill: number): { fill: number; highest: number; atmosphere: number } => ({
    fill: psi(fill),
    highest: psi(27),
    atmosphere: seaLevel,
  })

  // Corrected: 5.46 gal swell, 28.5 gal of tank at 19 psi.
  it('swells by 5.46 gal and asks for 28.5 gal', () => {
    near(inGallons(systemVolume119 * swelling), 5.46)
    near(inGallons(numberOf(diaphragmTank({ expansion: systemVolume119 * swelling, ...to(19) }))), 28.5)
  })

  const small = { volume: gallons(4.4), precharge: psi(12), ...to(12), highest: psi(30) }

  it('4.4 gal take 1.77 gal from 12 psi to 30 psi', () => near(inGallons(numberOf(tankAcceptance(small))), 1.77))

  // Corrected: the relief valve lifts at about 100 F.
  it('the relief valve lifts at about 100 F', () => {
    const fluid = { glycol: 'propylene-glycol', volumeFraction: 0.35 } as const
    const lift = numberOf(liftTemperature({ systemVolume: systemVolume119, fluid, cold: fahrenheit(50), tank: small }))
    expect(Math.abs(lift - fahrenheit(100))).toBeLessThan(2)
  })
})

describe('other authorities', () => {
  // Vectors: Vs 100 gal, 195 F, Pf 26.7, Po 44.7, Pa 14.7: 15.0 gal, the row of the state table. And 30 gal at 200 F: 4.79.
  it.each([
    [100, 195, 15.0],
    [30, 200, 4.79],
  ])('state rule: %s gal at %s F: %s gal', (systemContent, hot, expected) => {
    const pressures = { fill: psi(12), highest: psi(30), atmosphere: seaLevel }
    const tank = tankByStateRule({ systemVolume: gallons(systemContent), hot: fahrenheit(hot), ...pressures })
    near(inGallons(numberOf(tank)), expected, 0.003)
  })

  // The same 30 gal on a diaphragm: 2.64 gal of 1.062 gal swelling.
  it('30 gal on a diaphragm: 2.64 gal', () => {
    const tank = diaphragmTank({ expansion: gallons(1.062), fill: psi(12), highest: psi(30), atmosphere: seaLevel })
    near(inGallons(numberOf(tank)), 2.64, 0.003)
  })

  // Simple form of European practice: 600 L, 3.5 %, 1 bar at the tank when cold (2 bar absolute) to 3 bar: with the static
  // 1 bar and 0.3 bar on top it is 0.3 + 1 + 1 = 2.3 bar absolute against 4 bar: 49.4 L.
  it('600 L by the simple European form: 49.4 L', () => {
    const tank = diaphragmTank({ expansion: 0.6 * 0.035, fill: 1.3e5, highest: 3e5, atmosphere: 1e5 })
    near(numberOf(tank) * 1000, 49.4, 0.001)
  })

  // The reserve of EN 12828 (recalled): (6 L + 3 L) of a tank between 1.5 bar and 2.5 bar: 9 * 3.5 / 1 = 31.5 L, by hand.
  it('EN 12828 by hand: 31.5 L', () => {
    const tank = tankWithReserve({
      expansion: 0.006,
      reserve: 0.003,
      precharge: 1.5e5,
      highest: 2.5e5,
      atmosphere: 1e5,
    })
    near(numberOf(tank) * 1000, 31.5, 1e-9)
  })
})
