import type { Glycol } from '../glycol.js'
import { glycolDensity } from '../glycol-density.js'
import type { Sized } from '../sized.js'
import { waterDensity } from '../water-density.js'

/** What fills a heating system: water, or glycol in water told by volume. */
export type ExpandingFluid = 'water' | { readonly glycol: Glycol; readonly volumeFraction: number }

/** Density of what fills the system; kg/m3. */
export function densityOf(fluid: ExpandingFluid, temperature: number): Sized {
  return fluid === 'water' ? waterDensity(temperature) : glycolDensity({ ...fluid, temperature })
}
