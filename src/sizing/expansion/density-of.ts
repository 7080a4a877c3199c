import { glycolDensity } from '../glycol-density.js'
import type { HeatingFluid } from '../fluids/heating-fluid.js'
import type { Sized } from '../sized.js'
import { waterDensity } from '../water-density.js'

/** Density of what fills the system; kg/m3. */
export function densityOf(fluid: HeatingFluid, temperature: number): Sized {
  return fluid === 'water' ? waterDensity(temperature) : glycolDensity({ ...fluid, temperature })
}
