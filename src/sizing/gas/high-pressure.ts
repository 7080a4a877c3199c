import type { GasFlow } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { dropTerm, flowAt, flowClaim, impossiblePipe, type SmoothPipe } from './smooth-pipe.js'
import { lowPressure, psi } from './units.js'

/** Constant of the equation for 1.5 psi and more, in inches, cfh, feet and psi absolute. */
const constant = 18.93

const assumed = ['gas at 60 F', 'a smooth bore', 'no change of height']

interface HighPressure extends SmoothPipe {
  /** Pa, gauge, at the inlet. */
  readonly inlet: number
  /** Pa, absolute, of the air around. */
  readonly atmosphere: number
  readonly gas: GasFlow
}

/**
 * Pressure at the end of a pipe that gas of 1.5 psi and more flows through, by the high-pressure equation of the fuel gas
 * code: there the squares of the absolute pressures fall evenly.
 *
 * @returns Pa, gauge
 *
 * @example
 * // 2,550 cfh through 10 ft of 3/4 in. type K copper from 2 psi: value 6900, or 1 psi
 * gasOutlet({ flow: 0.02006, inlet: 13790, insideDiameter: 0.01892, length: 3.048, atmosphere: 101353, gas: gasFlow('natural-gas') })
 */
export function gasOutlet({ flow, inlet, atmosphere, gas, ...pipe }: HighPressure & { readonly flow: number }): Sizing {
  const why = firstImpossible(flowClaim(flow)) ?? impossiblePipe(pipe) ?? impossibleInlet({ inlet, atmosphere })
  if (why !== undefined) return cannotSize(why)
  const start = inlet + atmosphere
  const fall = (dropTerm(flow, pipe, gas, constant) / gas.compressionFactor) * psi ** 2
  if (fall >= start ** 2) return cannotSize('The pipe is too narrow: the gas would lose more than all of its pressure.')
  const value = Math.sqrt(start ** 2 - fall) - atmosphere
  if (value < 0) return cannotSize('The pipe is too narrow: no pressure is left at its end.')
  return sized({
    value,
    working: [
      { name: 'gas flow', value: flow, unit: 'm3/s', readAs: 'gas-flow' },
      { name: 'absolute pressure at the inlet', value: start, unit: 'Pa' },
      { name: 'fall of its square', value: fall, unit: 'Pa2' },
      { name: 'pressure at the end', value, unit: 'Pa' },
    ],
    assumed,
    valid: inlet >= lowPressure,
  })
}

/**
 * Gas of 1.5 psi and more that a pipe carries at a drop.
 *
 * @returns m3/s at 60 F
 *
 * @example
 * // 10 ft of 3/4 in. type K copper, 2 psi, 1 psi drop: value 0.02, or 2,550 cfh
 * gasCapacityHigh({ drop: 6895, inlet: 13790, insideDiameter: 0.01892, length: 3.048, atmosphere: 101353, gas: gasFlow('natural-gas') })
 */
export function gasCapacityHigh({
  drop,
  inlet,
  atmosphere,
  gas,
  ...pipe
}: HighPressure & { readonly drop: number }): Sizing {
  const why =
    firstImpossible(['drop along the gas pipe', drop, 'zero or more']) ??
    impossiblePipe(pipe) ??
    impossibleInlet({ inlet, atmosphere })
  if (why !== undefined) return cannotSize(why)
  if (drop > inlet) return cannotSize('The drop along the gas pipe is more than the pressure at its inlet.')
  const start = inlet + atmosphere
  const fall = start ** 2 - (start - drop) ** 2
  const value = flowAt((fall / psi ** 2) * gas.compressionFactor, pipe, gas, constant)
  return sized({
    value,
    working: [
      { name: 'absolute pressure at the inlet', value: start, unit: 'Pa' },
      { name: 'absolute pressure at the end', value: start - drop, unit: 'Pa' },
      { name: 'fall of its square', value: fall, unit: 'Pa2' },
      { name: 'gas that it carries', value, unit: 'm3/s', readAs: 'gas-flow' },
    ],
    assumed,
    valid: inlet >= lowPressure,
  })
}

function impossibleInlet({ inlet, atmosphere }: { inlet: number; atmosphere: number }): string | undefined {
  return firstImpossible(
    ['gas pressure at the inlet', inlet, 'zero or more'],
    ['pressure of the air', atmosphere, 'above zero'],
  )
}
