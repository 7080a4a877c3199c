import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  availableSuctionHead,
  balanceShare,
  circulatorEfficiencyIndex,
  gravityFlow,
  hydraulicPower,
  operatingPoint,
  type Pump,
  pumpAtSpeed,
  referencePower,
  runLoss,
  shaftPower,
} from '../../../src/sizing/index.js'
import type { Sizing } from '../../../src/sizing/sizing.js'
import { numberOf } from '../number-of.js'

const run = { density: 983.2, viscosity: 0.000466, parts: [{ name: 'valve', part: 'valve', kv: 2 }] } as const
const pump: Pump = {
  curve: [
    { flow: 0, head: 4 },
    { flow: 0.001, head: 0 },
  ],
  control: { mode: 'constant-speed' },
}
const whyNot = (sizing: Sizing): string => (sizing.sized ? 'sized' : sizing.why)

describe('operating point', () => {
  it('is where the pump makes what the circuit takes', () => {
    const flow = numberOf(operatingPoint({ pump, run }))
    const loss = numberOf(runLoss({ flow, ...run })) / (983.2 * 9.80665)
    expect(loss).toBeCloseTo(4 * (1 - flow / 0.001), 6)
  })

  it('names what cannot be', () => {
    expect(whyNot(operatingPoint({ pump: { ...pump, curve: [] }, run }))).toBe(
      'pump: A pump curve has at least two points.',
    )
  })
})

describe('gravity', () => {
  const loop = (warmDensity: number, height: number): Sizing =>
    gravityFlow({ warmDensity, coolDensity: 998, height, run })

  it('drives nothing where both legs weigh the same or the riser is the heavier', () => {
    expect(numberOf(loop(998, 3))).toBe(0)
    expect(numberOf(loop(999, 3))).toBe(0)
    expect(loop(999, 3)).toMatchObject({ valid: false })
  })

  it('drives more the higher and the warmer the riser', () => {
    const height = fc.double({ min: 0.5, max: 20, noNaN: true })
    const warm = fc.double({ min: 960, max: 995, noNaN: true })
    fc.assert(
      fc.property(height, warm, (high, density) => {
        expect(numberOf(loop(density, high * 1.1))).toBeGreaterThan(numberOf(loop(density, high)))
        expect(numberOf(loop(density - 2, high))).toBeGreaterThan(numberOf(loop(density, high)))
      }),
    )
  })

  it('meets the loss of its run', () => {
    const flow = numberOf(loop(972, 4))
    expect(numberOf(runLoss({ flow, ...run }))).toBeCloseTo(26 * 9.80665 * 4, 3)
  })
})

describe('what cannot be is named', () => {
  it.each([
    [whyNot(balanceShare({ flow: 1, designFlow: 0 })), 'The design flow cannot be 0: it is above zero.'],
    [whyNot(hydraulicPower({ flow: -1, head: 1, density: 1 })), 'The flow cannot be -1: it is zero or more.'],
    [whyNot(shaftPower({ flow: 1, head: 1, density: 1, efficiency: 2 })), 'The efficiency cannot be 2: it is a share.'],
    [whyNot(referencePower(-1)), 'The hydraulic power cannot be -1: it is zero or more.'],
    [
      whyNot(circulatorEfficiencyIndex({ powers: [1, 1, 1, 1], hydraulic: 0 })),
      'The hydraulic power cannot be 0: it is above zero.',
    ],
    [
      whyNot(availableSuctionHead({ pressure: 1, vaporPressure: 1, density: 0, lift: 0, loss: 0 })),
      'The density cannot be 0: it is above zero.',
    ],
    [
      whyNot(gravityFlow({ warmDensity: 1, coolDensity: 1, height: -1, run })),
      'The height of the loop cannot be -1: it is zero or more.',
    ],
  ])('%s', (said, expected) => {
    expect(said).toBe(expected)
  })
})

describe('shares and speeds', () => {
  it('compare a flow with its design', () => {
    expect(numberOf(balanceShare({ flow: 0.75, designFlow: 1 }))).toBe(0.75)
  })

  it('follow the affinity laws: half the speed gives half the flow, a quarter of the head, an eighth of the power', () => {
    expect(pumpAtSpeed({ flow: 8, head: 8, power: 8, speedRatio: 0.5 })).toMatchObject({ flow: 4, head: 2, power: 1 })
    expect(pumpAtSpeed({ flow: 8, head: 8, power: 8, speedRatio: -1 })).toMatchObject({
      why: 'The ratio of the speeds cannot be -1: it is zero or more.',
    })
  })
})
