import { boundsOf, fact, largestOf, rebound } from '../facts/index.js'
import { boiler, installation, quantity } from '../model/index.js'

/** Hottest water that any boiler can be set to send out. Boilers that are not listed can only be hotter. */
export const hottestSupply = fact('hottestSupply', {
  of: installation,
  type: quantity('temperature'),
  read: ({ ask, listed }) => {
    const { things, more } = listed(boiler)
    const hottest = largestOf(things.map((thing) => ask('maximumSupply', thing)))
    if (more === 0 && things.length > 0) return hottest
    const open = rebound([hottest], boundsOf(hottest).low, Infinity)
    return { ...open, missing: [...hottest.missing, { subject: boiler.name, fact: 'count' }] }
  },
})
