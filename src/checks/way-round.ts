import { type Context } from '../facts/index.js'
import {
  circulator,
  divertingValve,
  heatingMixingValve,
  thermostaticValve,
  zoneValve,
  type Thing,
} from '../model/index.js'
import { reachesWithout } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { isOfKind } from './of-kind.js'
import { yesOrNo } from './yes-or-no.js'

/** Whether a way stays open from the outlet of the pump back to its inlet when every valve shuts that shuts by itself; a bypass valve opens. */
export const wayRound = defineCheck('wayRound', {
  of: circulator,
  answers: ['yes', 'no'],
  answerable: true,
  judge: ({ subject, network }: Context) =>
    yesOrNo(
      reachesWithout(
        network,
        { component: subject.id, port: 'out' },
        (thing, port) => thing.id === subject.id && port === 'in',
        { crossing: true, allListed: true, things: (thing) => thing.id === subject.id || shutsByItself(thing) },
      ),
    ),
})

const shutsByItself: (thing: Thing) => boolean = isOfKind(
  zoneValve,
  thermostaticValve,
  divertingValve,
  heatingMixingValve,
)
