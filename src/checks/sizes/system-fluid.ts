import type { Context } from '../../facts/index.js'
import { heatingFluid } from '../../model/index.js'
import type { HeatingFluid } from '../../sizing/index.js'
import { askOnce, type Taking } from './size-line.js'

/** What fills the heating system. */
export function systemFluid(context: Context, take: Taking): HeatingFluid {
  const antifreeze = take.word(askOnce(context, heatingFluid.name, 'antifreeze'))
  if (antifreeze !== 'propylene-glycol' && antifreeze !== 'ethylene-glycol') return 'water'
  return { glycol: antifreeze, volumeFraction: take.number(askOnce(context, heatingFluid.name, 'concentration')) }
}
