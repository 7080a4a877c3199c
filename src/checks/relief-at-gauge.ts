import { fact, largestOf, smallestOf, boundsOf, rebound, unknown, type Answer, type Context } from '../facts/index.js'
import { boiler, pressureGauge, quantity } from '../model/index.js'
import { lowestReliefSetting } from './lowest-relief-setting.js'

/** Lowest pressure at which a relief valve of the boilers opens; between those of the boilers where there are several. */
export const reliefAtGauge = fact('reliefAtGauge', { of: pressureGauge, type: quantity('pressure'), read })

function read({ ask, listed }: Context): Answer {
  const { things, more } = listed(boiler)
  const settings = things.map((thing) => ask(lowestReliefSetting, thing))
  if (more > 0 || settings.length === 0)
    return unknown({
      missing: [...settings.flatMap(({ missing }) => missing), { subject: boiler.name, fact: 'count' }],
    })
  return rebound(settings, boundsOf(smallestOf(settings)).low, boundsOf(largestOf(settings)).high)
}
