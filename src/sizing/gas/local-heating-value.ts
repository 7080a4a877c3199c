import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface MeteredGas {
  /** J/m3 at 60 F and the standard pressure. */
  readonly heatingValue: number
  /** Pa, gauge, of the gas in the meter. */
  readonly pressure: number
  /** Pa, absolute, of the air around. */
  readonly atmosphere: number
  /** K, of the gas in the meter. */
  readonly temperature: number
}

/**
 * Heat in a volume of gas as a plain meter counts it, where pressure and temperature differ from the standard: 60 F and 30 in.
 * of mercury. Bills at altitude may carry this value already.
 *
 * @returns J/m3
 *
 * @example
 * localHeatingValue({ heatingValue: 38.19e6, pressure: 1744, atmosphere: 83100, temperature: 288.7 }) // value 31.9e6
 */
export function localHeatingValue({ heatingValue, pressure, atmosphere, temperature }: MeteredGas): Sizing {
  const why = firstImpossible(
    ['heating value of the gas', heatingValue, 'above zero'],
    ['gas pressure in the meter', pressure, 'zero or more'],
    ['pressure of the air', atmosphere, 'above zero'],
    ['temperature of the gas', temperature, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const denser = ((pressure + atmosphere) / standardPressure) * (standardTemperature / temperature)
  return sized({
    value: heatingValue * denser,
    working: [
      { name: 'gas over gas at the standard', value: denser, unit: '1' },
      { name: 'heating value at the meter', value: heatingValue * denser, unit: 'J/m3' },
    ],
    assumed: ['a meter that does not compensate'],
    valid: true,
  })
}

/** 30 inches of mercury at 32 F, 14.73 psi; Pa. */
const standardPressure = 101_592
/** 60 F; K. */
const standardTemperature = 288.7056
