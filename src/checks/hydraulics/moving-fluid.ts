import type { Context } from '../../facts/index.js'
import { heatingFluid, type Thing } from '../../model/index.js'
import {
  fluidDensity,
  fluidHeatCapacity,
  fluidViscosity,
  type HeatingFluid,
  type MovingFluid,
} from '../../sizing/index.js'
import type { Asker } from './asker.js'
import { glycolNamed } from '../glycol-named.js'

/** The fluid, and what a cubic meter of it takes up for a degree: J/m3 K. */
export interface HeatingMedium extends MovingFluid {
  readonly heatPerVolume: number
}

/** The fluid at its hottest mean, at which it resists least; undefined where something is missing. */
export function movingFluid({ find }: Context, asker: Asker): HeatingMedium | undefined {
  const thing = find(heatingFluid.name)
  if (thing === undefined) return asker.lacks(heatingFluid.name, 'antifreeze')
  const temperature = asker.number(thing, 'highestMean')
  const antifreeze = asker.word(thing, 'antifreeze')
  const fluid = antifreeze === 'no-antifreeze' ? 'water' : mixtureOf(thing, antifreeze, asker)
  if (temperature === undefined || fluid === undefined) return undefined
  const [density, viscosity] = [fluidDensity({ fluid, temperature }), fluidViscosity({ fluid, temperature })]
  const capacity = fluidHeatCapacity({ fluid, temperature })
  if (!density.sized || !viscosity.sized || !capacity.sized) return asker.lacks(heatingFluid.name, 'highestMean')
  return { density: density.value, viscosity: viscosity.value, heatPerVolume: density.value * capacity.value }
}

function mixtureOf(thing: Thing, antifreeze: string | undefined, asker: Asker): HeatingFluid | undefined {
  const glycol = glycolNamed(antifreeze ?? '')
  if (glycol === undefined) return asker.lacks(heatingFluid.name, 'antifreeze')
  const volumeFraction = asker.number(thing, 'concentration')
  return volumeFraction === undefined ? undefined : { glycol, volumeFraction }
}
