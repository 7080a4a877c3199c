import { expansionTank, fillDevice } from '../model/index.js'
import { reachesWithout } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { isTankJoint } from './is-tank-joint.js'
import { yesOrNo } from './yes-or-no.js'
import { isOfKind } from './of-kind.js'

/** Whether the fill joins where an expansion tank does: nothing but fittings and valves lies between the two. */
export const joinsAtTank = defineCheck('joinsAtTank', {
  of: fillDevice,
  answers: ['yes', 'no'],
  answerable: true,
  judge: ({ subject, network, listed }) =>
    yesOrNo(
      reachesWithout(network, { component: subject.id, port: 'out' }, isTank, {
        crossing: true,
        allListed: listed(expansionTank).more === 0,
        things: (thing) => thing.id === subject.id || !isTankJoint(thing),
      }),
    ),
})

const isTank = isOfKind(expansionTank)
