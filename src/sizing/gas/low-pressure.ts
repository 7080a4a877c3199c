import type { GasFlow } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { boreAt, dropTerm, flowAt, flowClaim, impossiblePipe, lengthClaim, type SmoothPipe } from './smooth-pipe.js'
import { inchOfWater, lowPressure } from './units.js'

/** Constant of the equation for less than 1.5 psi, in inches, cfh, feet and inches of water. */
const constant = 19.17

const assumed = ['gas below 1.5 psi, at 60 F', 'a smooth bore', 'no change of height']

/**
 * Pressure that gas below 1.5 psi loses along a pipe, by the low-pressure equation of the fuel gas code.
 *
 * @returns Pa
 *
 * @example
 * // 153.2 cfh through 24 ft of 1 in. steel: value 18.9, or 0.0758 in wc
 * gasDrop({ flow: 0.001205, insideDiameter: 0.02664, length: 7.315, gas: gasFlow('natural-gas') })
 */
export function gasDrop({ flow, gas, ...pipe }: SmoothPipe & { readonly flow: number; readonly gas: GasFlow }): Sizing {
  const why = firstImpossible(flowClaim(flow)) ?? impossiblePipe(pipe)
  if (why !== undefined) return cannotSize(why)
  const value = dropTerm(flow, pipe, gas, constant) * inchOfWater
  return sized({
    value,
    working: [
      { name: 'gas flow', value: flow, unit: 'm3/s', readAs: 'gas-flow' },
      { name: 'inside diameter', value: pipe.insideDiameter, unit: 'm' },
      { name: 'length', value: pipe.length, unit: 'm' },
      { name: 'factor Cr', value: gas.flowFactor, unit: '1' },
      { name: 'drop', value, unit: 'Pa', readAs: 'gas-pressure' },
    ],
    assumed,
    valid: value < lowPressure,
  })
}

/**
 * Gas below 1.5 psi that a pipe carries at a drop.
 *
 * @returns m3/s at 60 F
 *
 * @example
 * // 50 ft of 3/4 in. steel at 0.5 in wc: value 0.001192, or 151.6 cfh
 * gasCapacity({ drop: 124.5, insideDiameter: 0.02093, length: 15.24, gas: gasFlow('natural-gas') })
 */
export function gasCapacity({
  drop,
  gas,
  ...pipe
}: SmoothPipe & { readonly drop: number; readonly gas: GasFlow }): Sizing {
  const why = firstImpossible(['drop along the gas pipe', drop, 'zero or more']) ?? impossiblePipe(pipe)
  if (why !== undefined) return cannotSize(why)
  const value = flowAt(drop / inchOfWater, pipe, gas, constant)
  return sized({
    value,
    working: [
      { name: 'drop', value: drop, unit: 'Pa', readAs: 'gas-pressure' },
      { name: 'inside diameter', value: pipe.insideDiameter, unit: 'm' },
      { name: 'length', value: pipe.length, unit: 'm' },
      { name: 'factor Cr', value: gas.flowFactor, unit: '1' },
      { name: 'gas that it carries', value, unit: 'm3/s', readAs: 'gas-flow' },
    ],
    assumed,
    valid: drop < lowPressure,
  })
}

interface WantedBore {
  /** m3/s at 60 F */
  readonly flow: number
  /** m, with what its fittings count for. */
  readonly length: number
  /** Pa */
  readonly drop: number
  readonly gas: GasFlow
}

/**
 * Bore that a flow of gas below 1.5 psi wants.
 *
 * @returns m
 *
 * @example
 * gasBore({ flow: 0.001192, length: 15.24, drop: 124.5, gas: gasFlow('natural-gas') }) // value 0.02093
 */
export function gasBore({ flow, length, drop, gas }: WantedBore): Sizing {
  const why = firstImpossible(flowClaim(flow), lengthClaim(length), ['drop along the gas pipe', drop, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const value = boreAt(flow, drop / inchOfWater, length, gas, constant)
  return sized({
    value,
    working: [
      { name: 'gas flow', value: flow, unit: 'm3/s', readAs: 'gas-flow' },
      { name: 'drop over length', value: drop / length, unit: 'Pa/m' },
      { name: 'bore', value, unit: 'm' },
    ],
    assumed,
    valid: drop < lowPressure,
  })
}
