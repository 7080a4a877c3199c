import { describe, expect, it } from 'vitest'
import {
  churchill,
  darcyFriction,
  fluidDensity,
  fluidViscosity,
  type HeatingFluid,
  headOf,
  type MovingFluid,
  pipeLoss,
  pipeVelocity,
  reynoldsNumber,
} from '../../../src/sizing/index.js'
import { largestPexBore, type PipeName, pipeRoughness, pipeSize, surfaceOf } from '../../../src/tables/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'
import { whyOf } from '../why-of.js'
import { within } from '../within.js'

const foot = si('length', '1 ft')
const gpm = si('volumeFlow', '1 gpm')

function fluidAt(fluid: HeatingFluid, fahrenheit: number): MovingFluid {
  const state = { fluid, temperature: si('temperature', `${fahrenheit} F`) }
  return { density: numberOf(fluidDensity(state)), viscosity: numberOf(fluidViscosity(state)) }
}

function bore(pipe: PipeName, size: number): { readonly insideDiameter: number; readonly roughness: number } {
  return { insideDiameter: pipeSize(pipe, size)!.inside, roughness: pipeRoughness(surfaceOf(pipe)).rough }
}

function headInFeet(pressure: number, { density }: MovingFluid): number {
  return numberOf(headOf({ pressure, density })) / foot
}

const water = fluidAt('water', 140)

describe('friction factor', () => {
  // Published test values of an open library of fluid formulas.
  it.each([
    [128, 0, 0.5],
    [100_000, 0, 0.01798977308427384],
    [100_000, 0.0001, 0.0185138661],
  ])('at Re %s and roughness %s: %s', (reynolds, relativeRoughness, expected) => {
    within(1e-8, numberOf(darcyFriction({ reynolds, relativeRoughness })), expected)
  })

  // The same library, at Re 100,000 and 0.0001: explicit approximations of the equation that is solved here.
  it('lies by the published approximations', () => {
    const solved = numberOf(darcyFriction({ reynolds: 1e5, relativeRoughness: 1e-4 }))
    within(2e-5, solved, 0.01851358983180063) // Serghides
    within(0.004, solved, 0.018452424431901808) // Swamee and Jain
    within(0.003, solved, 0.0184626246) // Churchill
    within(0.025, numberOf(darcyFriction({ reynolds: 1e4, relativeRoughness: 0 })), 0.03164) // Blasius, smooth
  })

  it('says which law it took', () => {
    const laws = [1000, 3000, 10_000].map((reynolds) => darcyFriction({ reynolds, relativeRoughness: 0 }))
    expect(laws.map((law) => (law.sized ? law.assumed[0] : law.why))).toEqual([
      'laminar flow, friction factor 64/Re',
      'transitional flow, friction on a straight line from 64/2000 at Re 2,000 to Colebrook and White at Re 4,000',
      'turbulent flow, friction by Colebrook and White',
    ])
    expect(darcyFriction({ reynolds: 3000, relativeRoughness: 0, method: 'churchill' })).toMatchObject({
      assumed: ['friction by Churchill 1977'],
    })
  })

  // Open library of fluid formulas, 1.3.1.
  it.each([
    [500, 0.128],
    [2000, 0.0320433188],
    [2500, 0.0351513479],
    [10_000, 0.0311781571],
  ])('by Churchill at Re %s: %s', (reynolds, expected) => within(1e-8, churchill(reynolds, 1e-4), expected))

  it('is nothing for a flow that stands, or a pipe rougher than wide', () => {
    expect(whyOf(darcyFriction({ reynolds: 0, relativeRoughness: 0 }))).toContain('Reynolds number')
    expect(darcyFriction({ reynolds: 1e5, relativeRoughness: 0.2 })).toMatchObject({ valid: false })
  })
})

describe('head lost in pipe', () => {
  // Job vectors; water at 140 F.
  it.each<[PipeName, number, number, number, number]>([
    ['copper-M', 1, 96, 1.33, 0.132],
    ['copper-M', 1, 44, 7, 1.11],
    ['copper-L', 2, 120, 12.4, 0.41],
  ])('%s %s, %s ft at %s gpm: %s ft', (pipe, size, length, flow, expected) => {
    const loss = numberOf(pipeLoss({ flow: flow * gpm, ...bore(pipe, size), length: length * foot, ...water }))
    within(0.02, headInFeet(loss, water), expected)
  })

  it('has the Reynolds number of the first of them: 8414', () => {
    within(0.005, numberOf(reynoldsNumber({ flow: 1.33 * gpm, ...bore('copper-M', 1), ...water })), 8414)
  })

  // Job vector 9.34 ft: 165 ft of 5/8 PEX, 1.736 gpm, 2.6e-5 ft2/s. It counts with the largest bore of the standard, 0.584 in;
  // with the average one, 0.574 in, it is (0.584/0.574)^4.8 = 1.09 times as much, 10.0 ft.
  it('PEX at its largest bore agrees with the job, at its average bore loses 9 % more', () => {
    const fluid = { density: 1000, viscosity: 2.6e-5 * foot ** 2 * 1000 }
    const run = { flow: 1.736 * gpm, length: 165 * foot, roughness: bore('pex', 0.625).roughness, ...fluid }
    const largest = numberOf(pipeLoss({ ...run, insideDiameter: largestPexBore(0.625)! }))
    within(0.05, headInFeet(largest, fluid), 9.34)
    const average = numberOf(pipeLoss({ ...run, ...bore('pex', 0.625) }))
    within(0.01, average / largest, 1.09)
  })

  // Water at 140 F in type M, computed with an exact solution and IAPWS-95.
  it.each([
    [0.5, 1, 1.5544],
    [0.5, 2, 5.2481],
    [0.75, 4, 3.29],
    [1, 6, 1.92],
    [1.25, 10, 1.8141],
  ])('type M %s at %s gpm: %s ft for 100 ft', (size, flow, expected) => {
    const loss = numberOf(pipeLoss({ flow: flow * gpm, ...bore('copper-M', size), length: 100 * foot, ...water }))
    within(0.003, headInFeet(loss, water), expected)
  })

  // Cengel and Cimbala, Fluid Mechanics, example 8-3: f 0.0174, 1700 lbf/ft2.
  it('agrees with a textbook', () => {
    const pound = si('mass', '1 lb')
    const fluid = { density: (62.36 * pound) / foot ** 3, viscosity: (0.0007536 * pound) / foot }
    const pipe = { insideDiameter: foot / 6, length: 200 * foot, roughness: 7e-6 * foot }
    const result = pipeLoss({ flow: 0.2 * foot ** 3, ...pipe, ...fluid })
    within(0.005, numberOf(result), (1700 * si('pressure', '1 psi')) / 144)
    const factor = result.sized ? result.working.find(({ name }) => name === 'friction factor')?.value : undefined
    within(0.005, factor!, 0.0174)
  })

  it('can be followed with a pencil', () => {
    const result = pipeLoss({ flow: 1.33 * gpm, ...bore('copper-M', 1), length: 96 * foot, ...water })
    const step = (name: string): number =>
      (result.sized ? result.working.find((one) => one.name === name)?.value : undefined) ?? NaN
    const again = step('friction factor') * step('length over diameter') * step('pressure of the moving fluid')
    expect(again).toBeCloseTo(step('pressure loss'), 9)
    expect(result).toMatchObject({ valid: true, value: step('pressure loss') })
  })

  // First sample house: common pipe 1.05 ft/s, third zone 0.61 ft/s, and on a hot-water call 2.82 ft/s at full speed, 7.67 gpm.
  it.each<[PipeName, number, number, number]>([
    ['copper-M', 1.25, 4.285, 1.05],
    ['copper-M', 1, 7.67, 2.82],
    ['copper-M', 0.75, 0.98, 0.61],
  ])('velocity in %s %s at %s gpm: %s ft/s', (pipe, size, flow, expected) => {
    within(0.01, numberOf(pipeVelocity({ flow: flow * gpm, ...bore(pipe, size) })) / foot, expected)
  })

  it('names what is impossible', () => {
    const pipe = { ...bore('copper-M', 1), length: 1, ...water }
    expect(whyOf(pipeLoss({ ...pipe, flow: -1 }))).toBe('The flow cannot be -1: it is zero or more.')
    expect(whyOf(pipeLoss({ ...pipe, flow: 1, insideDiameter: 0 }))).toContain('inside diameter')
    expect(whyOf(reynoldsNumber({ ...pipe, flow: 1, viscosity: NaN }))).toContain('viscosity')
    expect(whyOf(headOf({ pressure: 1, density: 0 }))).toContain('density')
  })
})
