import { boiler } from '../model/index.js'
import { defineCheck } from '../rulebook/index.js'
import { wayToRelief } from './way-to-relief.js'
import { yesOrNo } from './yes-or-no.js'

/** Whether a relief valve stays joined to the boiler with everything shut that can be. What checks or strains is asked by `reliefWay`. */
export const reliefInVolume = defineCheck('reliefInVolume', {
  of: boiler,
  answers: ['yes', 'no'],
  answerable: true,
  judge: (context) => yesOrNo(wayToRelief(context, { closing: true })),
})
