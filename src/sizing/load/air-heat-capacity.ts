import { airProperties } from '../air-properties.js'
import { atmosphericPressure } from '../expansion/atmospheric-pressure.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface OutdoorAir {
  /** m above the sea */
  readonly altitude: number
  /** K; by custom the room temperature, at which leaking air is counted. */
  readonly temperature: number
}

/**
 * Heat that warms a cubic meter of air by a degree: less on mountains, where the air is thin.
 *
 * The round figures of the trade, 0.018 Btu/ft3 F and 0.34 Wh/m3 K, are 1207 and 1224 J/m3 K; this gives 1207 at 21 C by the sea.
 *
 * @returns J/m3 K
 *
 * @example
 * airHeatCapacity({ altitude: 1609, temperature: 294.26 }) // value 994
 */
export function airHeatCapacity({ altitude, temperature }: OutdoorAir): Sizing {
  const why = firstImpossible(['air temperature', temperature, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const pressure = atmosphericPressure(altitude)
  if (!pressure.sized) return pressure
  const { density } = airProperties(temperature, pressure.value)
  const value = density * heatCapacity
  return sized({
    value,
    working: [
      ...pressure.working,
      { name: 'density of the air', value: density, unit: 'kg/m3' },
      { name: 'heat capacity of a volume of air', value, unit: 'J/m3 K' },
    ],
    assumed: ['dry air', ...pressure.assumed],
    valid: pressure.valid && temperature >= 250 && temperature <= 320,
  })
}

/** J/kg K */
const heatCapacity = 1006
