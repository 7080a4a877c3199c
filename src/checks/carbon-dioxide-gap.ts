import { boundsOf, fact, known, unknown } from '../facts/index.js'
import { quantity, reading } from '../model/index.js'
import { carbonDioxideAt } from '../sizing/index.js'

/** How far the carbon dioxide of a reading is from what its oxygen allows, for natural gas. */
export const carbonDioxideGap = fact('carbonDioxideGap', {
  of: reading,
  type: quantity('fraction'),
  read: ({ ask }) => {
    const [oxygen, dioxide] = [ask('oxygen'), ask('carbonDioxide')].map(boundsOf)
    if (oxygen === undefined || dioxide === undefined) return unknown()
    if (oxygen.low !== oxygen.high || dioxide.low !== dioxide.high) return unknown()
    return known(Math.abs(dioxide.low - carbonDioxideAt(oxygen.low)))
  },
})
