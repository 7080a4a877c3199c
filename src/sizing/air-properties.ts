/** What moves and carries heat in dry air at one temperature and standard pressure. */
export interface AirProperties {
  /** kg/m3 */
  readonly density: number
  /** Pa s */
  readonly viscosity: number
  /** W/m K */
  readonly conductivity: number
  /** Pr, one. */
  readonly prandtl: number
}

/**
 * Dry air by the gas law and Sutherland's formulas; within 2 % of handbook tables from 250 K to 450 K.
 *
 * @param temperature K
 * @param pressure Pa, absolute
 *
 * @example
 * airProperties(300, 101_325).viscosity // 1.846e-5
 */
export function airProperties(temperature: number, pressure: number): AirProperties {
  const viscosity = sutherland(temperature, 1.716e-5, 110.4)
  const conductivity = sutherland(temperature, 0.0241, 194)
  return {
    density: pressure / (gasConstant * temperature),
    viscosity,
    conductivity,
    prandtl: (heatCapacity * viscosity) / conductivity,
  }
}

function sutherland(temperature: number, atFreezing: number, constant: number): number {
  return (atFreezing * (temperature / 273.15) ** 1.5 * (273.15 + constant)) / (temperature + constant)
}

/** J/kg K */
const gasConstant = 287.05
/** J/kg K */
const heatCapacity = 1006
