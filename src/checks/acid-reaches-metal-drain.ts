import type { Context } from '../facts/index.js'
import { boiler, drainReceptor, type Thing } from '../model/index.js'
import type { Told } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { untreatedWay } from './condensate-way.js'
import { isCorrodible } from './is-corrodible.js'
import { yesOrNo } from './yes-or-no.js'

/** Whether condensate of the boiler reaches, without passing a neutralizer, a drain that acid attacks: iron, steel, copper, brass, concrete. */
export const acidReachesMetalDrain = defineCheck('acidReachesMetalDrain', {
  of: boiler,
  answers: ['yes', 'no'],
  answerable: true,
  judge: (context) =>
    yesOrNo(
      untreatedWay(context, (thing) => isAttackedDrain(context, thing)),
      'acid eats it',
    ),
})

function isAttackedDrain({ ask }: Context, thing: Thing): Told {
  if (thing.kind.name !== drainReceptor.name) return false
  const material = ask('material', thing)
  return material.state === 'word' ? isCorrodible(material.word) : { subject: thing.id, fact: 'material' }
}
