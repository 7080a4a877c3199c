import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { boiler, pressureGauge } from '../model/index.js'
import { reachesWithout } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { yesOrNo } from './yes-or-no.js'
import { isOfKind } from './of-kind.js'

/** Whether a pressure gauge shows the boiler's own pressure with everything shut that can be. */
export const gaugeInVolume = defineCheck('gaugeInVolume', {
  of: boiler,
  answers: ['yes', 'no'],
  answerable: true,
  judge,
})

function judge({ subject, network, listed, ask }: Context): Answer {
  const builtIn = ask('gaugeBuiltIn')
  if (builtIn.state === 'word' && builtIn.word === 'yes') return word('yes', { witness: ['gauge in the boiler'] })
  const allListed = listed(pressureGauge).more === 0
  const from = { component: subject.id, medium: 'heatingWater' } as const
  const traced = reachesWithout(network, from, isGauge, { closing: true, crossing: true, allListed })
  if (traced.truth !== -1 || builtIn.state === 'word') return yesOrNo(traced)
  return unknown({ witness: traced.witness, missing: builtIn.missing })
}

const isGauge = isOfKind(pressureGauge)
