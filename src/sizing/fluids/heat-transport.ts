import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { fluidDensity, fluidHeatCapacity } from './fluid-properties.js'
import type { HeatingFluid } from './heating-fluid.js'

interface Transport {
  readonly fluid: HeatingFluid
  /** K */
  readonly supply: number
  /** K */
  readonly return: number
  /** K, where the flow is measured: mostly at the pump. */
  readonly metered: number
}

/**
 * Heat that a flow carries between two temperatures: density where it is measured, heat capacity at the mean.
 *
 * The trade's 500 Btu/h for a gallon a minute and a degree is right near 60 F, and 2.6 % too much at 180 F.
 *
 * @returns W, below zero where the return is warmer
 *
 * @example
 * carriedHeat({ flow: 0.0000631, fluid: 'water', supply: 338.7, return: 327.6, metered: 327.6 }) // value 2890
 */
export function carriedHeat({ flow, ...transport }: Transport & { readonly flow: number }): Sizing {
  const why = firstImpossible(['flow', flow, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const capacity = capacityOf(transport)
  if (!capacity.sized) return capacity
  const difference = transport.supply - transport.return
  const value = flow * capacity.value * difference
  return sized({
    ...capacity,
    value,
    working: [
      ...capacity.working,
      { name: 'flow', value: flow, unit: 'm3/s' },
      { name: 'temperature difference', value: difference, unit: 'K' },
      { name: 'heat carried', value, unit: 'W' },
    ],
  })
}

/**
 * Flow that carries a heat rate between two temperatures.
 *
 * @returns m3/s
 *
 * @example
 * flowForHeat({ heatRate: 4645, fluid: 'water', supply: 338.7, return: 327.6, metered: 327.6 }) // value 0.000101, or 1.6 gpm
 */
export function flowForHeat({ heatRate, ...transport }: Transport & { readonly heatRate: number }): Sizing {
  const why = firstImpossible(['heat rate', heatRate, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const capacity = capacityOf(transport)
  if (!capacity.sized) return capacity
  const difference = transport.supply - transport.return
  if (difference <= 0) return cannotSize('A return that is not colder than the supply brings no heat.')
  const value = heatRate / (capacity.value * difference)
  return sized({
    ...capacity,
    value,
    working: [
      ...capacity.working,
      { name: 'heat rate', value: heatRate, unit: 'W' },
      { name: 'temperature difference', value: difference, unit: 'K' },
      { name: 'flow', value, unit: 'm3/s' },
    ],
  })
}

/** J/m3 K */
function capacityOf({ fluid, supply, return: back, metered }: Transport): Sizing {
  const density = fluidDensity({ fluid, temperature: metered })
  if (!density.sized) return density
  const capacity = fluidHeatCapacity({ fluid, temperature: (supply + back) / 2 })
  if (!capacity.sized) return capacity
  const value = density.value * capacity.value
  return sized({
    value,
    working: [...density.working, ...capacity.working, { name: 'heat capacity of a volume', value, unit: 'J/m3 K' }],
    assumed: [...new Set([...density.assumed, ...capacity.assumed])],
    valid: density.valid && capacity.valid,
  })
}
