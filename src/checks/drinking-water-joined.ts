import type { Context } from '../facts/index.js'
import { boiler } from '../model/index.js'
import { reachesWithout, type NetworkAnswer } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { isBackflowDevice, isDrinkingWater } from './drinking-water.js'
import { yesOrNo } from './yes-or-no.js'

/** Whether drinking water reaches the heating water of the boiler anywhere with all backflow devices taken out. Walls of heat exchangers are no way. */
export const drinkingWaterJoined = defineCheck('drinkingWaterJoined', {
  of: boiler,
  answers: ['yes', 'no'],
  answerable: true,
  judge: (context) => yesOrNo(unguardedWay(context), 'it is drinking water, and no backflow device lies on the way'),
})

function unguardedWay({ subject, network }: Context): NetworkAnswer {
  const from = { component: subject.id, medium: 'heatingWater' } as const
  return reachesWithout(network, from, isDrinkingWater, { things: isBackflowDevice })
}
