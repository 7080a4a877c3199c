import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { heatingFluid } from '../model/index.js'
import { defineCheck } from '../rulebook/index.js'

/** Whether anything was added to the heating water: antifreeze of any sort, or a chemical. */
export const treated = defineCheck('treated', { of: heatingFluid, answers: ['yes', 'no'], judge })

function judge({ ask }: Context): Answer {
  const antifreeze = ask('antifreeze')
  const additives = ask('additives')
  if (antifreeze.state === 'word' && antifreeze.word !== 'no-antifreeze')
    return word('yes', { witness: [antifreeze.word] })
  if (additives.state === 'list' && additives.members.length > 0) return word('yes', { witness: additives.members })
  const nothingElse = additives.state === 'list' && additives.complete
  if (antifreeze.state === 'word' && nothingElse) return word('no', { witness: ['no antifreeze, no additives'] })
  return unknown({ missing: [...antifreeze.missing, ...additives.missing] })
}
