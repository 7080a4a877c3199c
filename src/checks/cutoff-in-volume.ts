import { boiler, lowWaterCutoff } from '../model/index.js'
import { reachesWithout } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { yesOrNo } from './yes-or-no.js'
import { isOfKind } from './of-kind.js'

/** Whether the low-water cutoff stays joined to a boiler with everything shut that can be. */
export const cutoffInVolume = defineCheck('cutoffInVolume', {
  of: lowWaterCutoff,
  answers: ['yes', 'no'],
  answerable: true,
  judge: ({ subject, network, listed }) =>
    yesOrNo(
      reachesWithout(network, { component: subject.id, port: 'port' }, isBoiler, {
        closing: true,
        crossing: true,
        allListed: listed(boiler).more === 0,
      }),
    ),
})

const isBoiler = isOfKind(boiler)
