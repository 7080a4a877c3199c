import { boundsOf, fact, known, unknown } from '../facts/index.js'
import { quantity, reading } from '../model/index.js'
import { carbonDioxideFromOxygen } from '../sizing/index.js'

/** How far the carbon dioxide of a reading is from what its oxygen allows, for natural gas. */
export const carbonDioxideGap = fact('carbonDioxideGap', {
  of: reading,
  type: quantity('fraction'),
  read: ({ ask }) => {
    const [oxygen, dioxide] = [ask('oxygen'), ask('carbonDioxide')].map(boundsOf)
    if (oxygen === undefined || dioxide === undefined) return unknown()
    if (oxygen.low !== oxygen.high || dioxide.low !== dioxide.high) return unknown()
    const allowed = carbonDioxideFromOxygen({ oxygen: oxygen.low, mostCarbonDioxide })
    return allowed.sized ? known(Math.abs(dioxide.low - allowed.value)) : unknown()
  },
})

/** Highest share in the dry flue gas of natural gas, burned without excess air; published values spread from 0.118 to 0.12. */
const mostCarbonDioxide = 0.118
