import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  fittingsLeft,
  heatInputForRoom,
  largestFlue,
  orphanedFlueRatio,
  roomAirVolume,
  roomAirVolumeByInfiltration,
  ventLengthLeft,
  ventPressureLoss,
} from '../../../src/sizing/vent/index.js'
import { numberOf } from '../number-of.js'

const length = fc.double({ min: 0, max: 100, noNaN: true })
const positive = fc.double({ min: 0.01, max: 100, noNaN: true })
const fittings = fc.array(fc.record({ name: fc.constant('elbow'), count: fc.nat(20), each: length }), { maxLength: 5 })

describe('laws of vents', () => {
  it('every fitting added takes its length', () => {
    fc.assert(
      fc.property(length, fittings, positive, positive, (straight, all, most, each) => {
        const left = (more: typeof all): number =>
          numberOf(ventLengthLeft({ pipe: { straight, fittings: [...all, ...more] }, most, altitudeFactor: 1 }))
        expect(left([]) - left([{ name: 'elbow', count: 2, each }])).toBeCloseTo(2 * each, 6)
      }),
    )
  })

  it('the fittings that are left fit, and one more does not', () => {
    fc.assert(
      fc.property(length, positive, (left, each) => {
        const count = numberOf(fittingsLeft({ left, each }))
        expect(count * each).toBeLessThanOrEqual(left + 1e-6)
        expect((count + 1) * each).toBeGreaterThan(left - 1e-6)
      }),
    )
  })

  it('the largest flue has just the allowed ratio', () => {
    fc.assert(
      fc.property(fc.array(positive, { minLength: 1, maxLength: 4 }), positive, (outletDiameters, mostRatio) => {
        const flueArea = numberOf(largestFlue({ outletDiameters, mostRatio }))
        expect(numberOf(orphanedFlueRatio({ flueArea, outletDiameters }))).toBeCloseTo(mostRatio, 8)
      }),
    )
  })

  it('air volumes add up over appliances; at 0.42 changes an hour both methods agree for natural draft', () => {
    fc.assert(
      fc.property(positive, positive, (one, other) => {
        const appliance = (heatInput: number) => ({ name: 'heater', heatInput, air: 'natural-draft' as const })
        const volume = (...inputs: readonly number[]): number =>
          numberOf(roomAirVolume({ appliances: inputs.map(appliance) }))
        expect(numberOf(heatInputForRoom(volume(one)))).toBeCloseTo(one, 9)
        expect(volume(one) + volume(other)).toBeCloseTo(volume(one, other), 9)
        const measured = roomAirVolumeByInfiltration({ appliances: [appliance(one)], airChanges: 0.42 / 3600 })
        expect(numberOf(measured)).toBeCloseTo(volume(one), 9)
      }),
    )
  })

  it('pressure loss is zero at rest, grows with flow and falls with diameter', () => {
    const flow = fc.double({ min: 0, max: 0.05, noNaN: true })
    fc.assert(
      fc.property(flow, flow, fc.double({ min: 0.04, max: 0.2, noNaN: true }), (one, other, diameter) => {
        const pipe = { density: 1.02, viscosity: 1.95e-5, length: 15, roughness: 1.5e-6, resistance: 3 }
        const loss = (through: number, wide: number): number =>
          numberOf(ventPressureLoss({ ...pipe, flow: through, diameter: wide }))
        expect(loss(0, diameter)).toBe(0)
        expect(loss(Math.max(one, other), diameter)).toBeGreaterThanOrEqual(loss(Math.min(one, other), diameter))
        expect(loss(one, diameter * 1.5)).toBeLessThanOrEqual(loss(one, diameter))
      }),
    )
  })
})
