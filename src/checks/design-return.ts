import { installation, zone } from '../model/index.js'
import { cannotSize } from '../sizing/index.js'
import { sizedFact } from './sized-fact.js'
import { stated } from './sizes/chain.js'

/** Warmest return of all zones at the outdoor design temperature. */
export const designReturn = sizedFact('designReturn', {
  of: installation,
  quantity: 'temperature',
  size: ({ ask, listed }, take) => {
    const zones = take.all(zone.name, listed(zone))
    if (zones.length === 0) return cannotSize('There is no zone.')
    const returns = zones.map(
      (one) => take.number(ask('designSupply', one)) - take.number(ask('designDifference', one)),
    )
    return stated('warmest return', Math.max(...returns), 'K')
  },
})
