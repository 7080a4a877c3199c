import { atLeastZero, between, fact, unknown } from '../facts/index.js'
import { quantity, reading } from '../model/index.js'
import { airFree, oxygenInAir } from '../sizing/index.js'

/** Carbon monoxide of a reading without the air that dilutes it. */
export const airFreeMonoxide = fact('airFreeMonoxide', {
  of: reading,
  type: quantity('concentration'),
  read: ({ ask }) => {
    const monoxide = atLeastZero(ask('carbonMonoxide'))
    const oxygen = atLeastZero(ask('oxygen'))
    // More oxygen in the sample means more dilution; a sample of plain air says nothing.
    if (oxygen.low >= oxygenInAir) return unknown()
    const high = oxygen.high < oxygenInAir ? airFree(monoxide.high, oxygen.high) : Infinity
    return between(airFree(monoxide.low, oxygen.low), high)
  },
})
