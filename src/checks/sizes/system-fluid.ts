import { unknown, type Context } from '../../facts/index.js'
import { heatingFluid } from '../../model/index.js'
import type { HeatingFluid } from '../../sizing/index.js'
import { askOnce } from '../ask-once.js'
import { glycolNamed } from '../glycol-named.js'
import type { Taking } from './size-line.js'

/** What fills the heating system. Of antifreeze that is not listed nothing can be worked out: then it is noted as missing. */
export function systemFluid(context: Context, take: Taking): HeatingFluid {
  const antifreeze = take.word(askOnce(context, heatingFluid, 'antifreeze'))
  const glycol = glycolNamed(antifreeze)
  if (glycol !== undefined)
    return { glycol, volumeFraction: take.number(askOnce(context, heatingFluid, 'concentration')) }
  if (antifreeze !== 'no-antifreeze')
    take.number(unknown({ missing: [{ subject: heatingFluid.name, fact: 'antifreeze' }] }))
  return 'water'
}
