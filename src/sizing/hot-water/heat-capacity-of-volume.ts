import type { Sized } from '../sized.js'
import { waterDensity } from '../water-density.js'
import { waterHeatCapacity } from '../water-heat-capacity.js'

/**
 * Heat that warms a cubic meter of water by a degree.
 *
 * @param temperature K
 * @returns J/m3 K
 *
 * @example
 * heatCapacityOfVolume(313.15).value // 4.147e6
 */
export function heatCapacityOfVolume(temperature: number): Sized {
  const [density, capacity] = [waterDensity(temperature), waterHeatCapacity(temperature)]
  const value = density.value * capacity.value
  return {
    value,
    working: [...density.working, ...capacity.working, { name: 'heat capacity of a volume', value, unit: 'J/m3 K' }],
    assumed: density.assumed,
    valid: density.valid && capacity.valid,
  }
}
