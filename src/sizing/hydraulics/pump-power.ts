import { type Expected, firstImpossible } from '../first-impossible.js'
import { flowExpected } from '../friction/flow-in-pipe.js'
import { standardGravity } from '../friction/head.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface Lifted {
  /** m3/s */
  readonly flow: number
  /** m of the fluid */
  readonly head: number
  /** kg/m3 */
  readonly density: number
}

/**
 * Power that a pump gives to the fluid.
 *
 * @returns W
 *
 * @example
 * hydraulicPower({ flow: 0.000378, head: 3.048, density: 983.2 }) // value 11.1, 6 gpm at 10 ft
 */
export function hydraulicPower({ flow, head, density }: Lifted): Sizing {
  const why = firstImpossible(flowExpected(flow), ['head', head, 'zero or more'], ['density', density, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const value = density * standardGravity * flow * head
  return sized({
    value,
    working: [
      { name: 'flow', value: flow, unit: 'm3/s' },
      { name: 'head', value: head, unit: 'm', readAs: 'head' },
      { name: 'density', value: density, unit: 'kg/m3' },
      { name: 'hydraulic power', value, unit: 'W', readAs: 'power' },
    ],
    assumed: ['standard gravity, 9.80665 m/s2'],
    valid: true,
  })
}

/**
 * Power that a pump takes, at its shaft or from the wall, by the efficiency up to there: 0.05 to 0.45 from the wall for small
 * circulators.
 *
 * @returns W
 *
 * @example
 * shaftPower({ flow: 0.00631, head: 128.3, density: 997.5, efficiency: 0.7 }) // value 11,314, or 15.2 hp
 */
export function shaftPower({ efficiency, ...lifted }: Lifted & { readonly efficiency: number }): Sizing {
  const expected: Expected = ['efficiency', efficiency, 'a share']
  const why = firstImpossible(expected, ['efficiency', efficiency, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const hydraulic = hydraulicPower(lifted)
  if (!hydraulic.sized) return hydraulic
  const value = hydraulic.value / efficiency
  return sized({
    value,
    working: [
      ...hydraulic.working,
      { name: 'efficiency', value: efficiency, unit: '1' },
      { name: 'power taken', value, unit: 'W', readAs: 'power' },
    ],
    assumed: hydraulic.assumed,
    valid: true,
  })
}
