import type { Context } from '../facts/index.js'
import { gasAppliance, gasMeter, gasRegulator, gasShutoff, type Thing } from '../model/index.js'
import { everyWayPasses, reachesWithout } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { yesOrNo } from './yes-or-no.js'
import { isInFamily, isOfKind } from './of-kind.js'

/** Whether every way from a gas meter to the regulator passes a gas shutoff valve. */
export const shutoffAhead = defineCheck('shutoffAhead', {
  of: gasRegulator,
  answers: ['yes', 'no'],
  answerable: true,
  judge: (context) =>
    yesOrNo(
      everyWayPasses(context.network, inletOf(context), isMeter, {
        passes: ({ kind }) => kind.name === gasShutoff.name,
        things: isRegulator,
        allListed: context.listed(gasMeter).more === 0,
      }),
    ),
})

/** Whether an appliance takes gas ahead of the regulator, at the higher pressure. */
export const applianceAhead = defineCheck('applianceAhead', {
  of: gasRegulator,
  answers: ['yes', 'no'],
  answerable: true,
  judge: (context) =>
    yesOrNo(
      reachesWithout(context.network, inletOf(context), isAppliance, {
        things: isRegulator,
        allListed: context.listed(gasAppliance).more === 0,
      }),
      'it takes gas ahead of the regulator, at the higher pressure',
    ),
})

const inletOf = ({ subject }: Context): { readonly component: string; readonly port: string } => ({
  component: subject.id,
  port: 'in',
})

const isMeter = isOfKind(gasMeter)
const isRegulator = isOfKind(gasRegulator)
const isAppliance = (thing: Thing): boolean => isInFamily(thing, gasAppliance)
