import type { Context } from '../../facts/index.js'
import { heatingFluid, type Thing } from '../../model/index.js'
import { fluidDensity, fluidViscosity, type HeatingFluid, type MovingFluid } from '../../sizing/index.js'
import type { Asker } from './asker.js'

/** The fluid at its hottest mean, at which it resists least; undefined where something is missing. */
export function movingFluid({ find }: Context, asker: Asker): MovingFluid | undefined {
  const thing = find(heatingFluid.name)
  if (thing === undefined) return asker.lacks(heatingFluid.name, 'antifreeze')
  const temperature = asker.number(thing, 'highestMean')
  const antifreeze = asker.word(thing, 'antifreeze')
  const fluid = antifreeze === 'no-antifreeze' ? 'water' : mixtureOf(thing, antifreeze, asker)
  if (temperature === undefined || fluid === undefined) return undefined
  const [density, viscosity] = [fluidDensity({ fluid, temperature }), fluidViscosity({ fluid, temperature })]
  if (!density.sized || !viscosity.sized) return asker.lacks(heatingFluid.name, 'highestMean')
  return { density: density.value, viscosity: viscosity.value }
}

function mixtureOf(thing: Thing, antifreeze: string | undefined, asker: Asker): HeatingFluid | undefined {
  if (antifreeze !== 'propylene-glycol' && antifreeze !== 'ethylene-glycol')
    return asker.lacks(heatingFluid.name, 'antifreeze')
  const volumeFraction = asker.number(thing, 'concentration')
  return volumeFraction === undefined ? undefined : { glycol: antifreeze, volumeFraction }
}
