import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  churchill,
  cvFromKv,
  darcyFriction,
  flowAtLoss,
  kvForDrop,
  kvFromCv,
  pipeLoss,
  runLoss,
  type RunPart,
  valveLoss,
} from '../../../src/sizing/index.js'
import { numberOf } from '../number-of.js'

const range = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true })
const methods = fc.constantFrom('colebrook', 'churchill')
const pipes = fc.record({
  insideDiameter: range(0.008, 0.1),
  length: range(0.1, 200),
  roughness: range(0, 0.0002),
  density: range(900, 1100),
  viscosity: range(0.0002, 0.01),
  method: methods,
})
const flows = range(1e-7, 0.01)
const lossAt = (pipe: Omit<Parameters<typeof pipeLoss>[0], 'flow'>, flow: number): number =>
  numberOf(pipeLoss({ ...pipe, flow }))

describe('laws of friction', () => {
  it('nothing flows, nothing is lost; a whisper loses next to nothing', () => {
    fc.assert(
      fc.property(pipes, (pipe) => {
        expect(lossAt(pipe, 0)).toBe(0)
        expect(lossAt(pipe, 5e-324)).toBeLessThan(1e-300)
      }),
    )
  })

  it('more flow loses more, through all regimes', () => {
    fc.assert(
      fc.property(pipes, flows, range(1.0001, 3), (pipe, flow, more) => {
        expect(lossAt(pipe, flow * more)).toBeGreaterThan(lossAt(pipe, flow))
      }),
    )
  })

  it('a wider pipe loses less, a rougher one not less', () => {
    fc.assert(
      fc.property(pipes, flows, range(1.05, 2), (pipe, flow, more) => {
        const loss = lossAt(pipe, flow)
        expect(lossAt({ ...pipe, insideDiameter: pipe.insideDiameter * more }, flow)).toBeLessThan(loss)
        expect(lossAt({ ...pipe, roughness: pipe.roughness * more }, flow)).toBeGreaterThanOrEqual(loss * (1 - 1e-12))
      }),
    )
  })

  it('lengths add up', () => {
    fc.assert(
      fc.property(pipes, flows, range(0.1, 100), (pipe, flow, length) => {
        const together = lossAt({ ...pipe, length: pipe.length + length }, flow)
        const apart = lossAt(pipe, flow) + lossAt({ ...pipe, length }, flow)
        expect(Math.abs(together / apart - 1)).toBeLessThan(1e-12)
      }),
    )
  })

  // A pipe twice as large in all lengths, with twice the flow, has the same Reynolds number and half the velocity.
  it('does not depend on the units: like pipes lose alike', () => {
    fc.assert(
      fc.property(pipes, flows, range(0.3, 3), (pipe, flow, scale) => {
        const { insideDiameter, length, roughness } = pipe
        const large = {
          ...pipe,
          insideDiameter: insideDiameter * scale,
          length: length * scale,
          roughness: roughness * scale,
        }
        expect(Math.abs((lossAt(large, flow * scale) * scale ** 2) / lossAt(pipe, flow) - 1)).toBeLessThan(1e-9)
      }),
    )
  })

  it('the two methods agree within 3 % away from the transition, and within 35 % in it', () => {
    fc.assert(
      fc.property(range(1, 1e7), range(0, 0.01), (reynolds, relativeRoughness) => {
        const ratio = churchill(reynolds, relativeRoughness) / numberOf(darcyFriction({ reynolds, relativeRoughness }))
        expect(Math.abs(ratio - 1)).toBeLessThan(reynolds > 1900 && reynolds < 10_000 ? 0.35 : 0.03)
      }),
    )
  })

  it('every answer is a number not below zero, or says why there is none', () => {
    const any = fc.double()
    const asked = fc.record({
      flow: any,
      insideDiameter: any,
      length: any,
      roughness: any,
      density: any,
      viscosity: any,
      method: methods,
    })
    fc.assert(
      fc.property(asked, (one) => {
        const result = pipeLoss(one)
        expect(result.sized ? result.value >= 0 : result.why.length > 0).toBe(true)
      }),
    )
  })
})

describe('laws of runs and valves', () => {
  const parts = fc.array(
    fc.oneof(
      fc.record({
        name: fc.constant('pipe'),
        part: fc.constant('pipe' as const),
        insideDiameter: range(0.01, 0.05),
        length: range(1, 100),
        roughness: range(0, 0.0002),
      }),
      fc.record({ name: fc.constant('valve'), part: fc.constant('valve' as const), kv: range(0.3, 30) }),
      fc.record({
        name: fc.constant('ells'),
        part: fc.constant('fittings' as const),
        resistance: range(0.1, 20),
        insideDiameter: range(0.01, 0.05),
      }),
      fc.record({
        name: fc.constant('coil'),
        part: fc.constant('rated' as const),
        loss: range(100, 50_000),
        flow: range(1e-5, 1e-3),
      }),
    ),
    { minLength: 1, maxLength: 5 },
  )
  const fluid = { density: 983.2, viscosity: 0.000466 }

  it('a run loses what its parts lose, in any order', () => {
    fc.assert(
      fc.property(parts, flows, (some: readonly RunPart[], flow) => {
        const loss = numberOf(runLoss({ flow, ...fluid, parts: some }))
        const each = some.map((part) => numberOf(runLoss({ flow, ...fluid, parts: [part] })))
        const backward = numberOf(runLoss({ flow, ...fluid, parts: some.toReversed() }))
        expect(Math.abs(each.reduce((sum, one) => sum + one, 0) / loss - 1)).toBeLessThan(1e-12)
        expect(Math.abs(backward / loss - 1)).toBeLessThan(1e-12)
      }),
    )
  })

  it('the flow at a loss loses just that', () => {
    fc.assert(
      fc.property(parts, flows, (some: readonly RunPart[], flow) => {
        const run = { ...fluid, parts: some }
        expect(numberOf(flowAtLoss(run, numberOf(runLoss({ ...run, flow })))) / flow).toBeCloseTo(1, 9)
      }),
    )
  })

  it('valve coefficients lead back to each other, and to the drop they were chosen for', () => {
    fc.assert(
      fc.property(range(0.1, 100), range(1e-5, 1e-2), range(100, 1e5), range(900, 1100), (cv, flow, drop, density) => {
        expect(numberOf(cvFromKv(numberOf(kvFromCv(cv)))) / cv).toBeCloseTo(1, 12)
        const kv = numberOf(kvForDrop({ flow, drop, density }))
        expect(numberOf(valveLoss({ kv, flow, density })) / drop).toBeCloseTo(1, 12)
      }),
    )
  })
})
