import { between, fact } from '../facts/index.js'
import { emergencySwitch, installation, quantity } from '../model/index.js'
import { uncounted } from './uncounted.js'

/** How many marked switches stop the burner from outside the boiler room. */
export const emergencySwitches = fact('emergencySwitches', {
  of: installation,
  type: quantity('count'),
  read: ({ ask, listed }) => {
    const { things, more } = listed(emergencySwitch)
    const positions = things.map((thing) => ask('position', thing))
    const outside = positions.filter((one) => one.state === 'word' && one.word !== 'in-room').length
    const open = positions.filter((one) => one.state === 'unknown').length
    const missing = [...positions.flatMap((one) => one.missing), ...uncounted(emergencySwitch, more)]
    return between(outside, outside + open + more, { missing })
  },
})
