import { fluidDensity, fluidHeatCapacity, type HeatingFluid } from '../../sizing/index.js'

/** Heat that a cubic meter of the fluid takes up for a degree; J/m3 K. */
export function volumeHeat(fluid: HeatingFluid, temperature: number): number {
  const density = fluidDensity({ fluid, temperature })
  const capacity = fluidHeatCapacity({ fluid, temperature })
  return density.sized && capacity.sized ? density.value * capacity.value : NaN
}
