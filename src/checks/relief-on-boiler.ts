import { boiler } from '../model/index.js'
import { defineCheck } from '../rulebook/index.js'
import { wayToRelief } from './way-to-relief.js'
import { yesOrNo } from './yes-or-no.js'
import { isPipeOrFitting } from './of-kind.js'

/**
 * Whether a relief valve stands on the boiler: nothing but fittings lies between the two.
 *
 * Not judged: how long the nipple is, whether it is as wide as the inlet of the valve, and whether the valve stands upright
 * at the top. A line between two fittings is taken for the joint.
 */
export const reliefOnBoiler = defineCheck('reliefOnBoiler', {
  of: boiler,
  answers: ['yes', 'no'],
  answerable: true,
  judge: (context) =>
    yesOrNo(
      wayToRelief(context, {
        closing: true,
        checking: true,
        restricting: true,
        things: (thing) => thing.id !== context.subject.id && !isPipeOrFitting(thing),
      }),
    ),
})
