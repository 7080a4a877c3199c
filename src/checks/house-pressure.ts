import { atLeastZero, fact, rebound, smallestOf, type Answer, type Context } from '../facts/index.js'
import { pressureReducer, quantity, water } from '../model/index.js'
import { uncounted } from './uncounted.js'

/**
 * Pressure at which the drinking water of the house stands with nothing running: that of the supply, or what a pressure
 * reducer leaves of it.
 *
 * While a reducer may stand there unlisted, it is at most that of the supply. Every reducer listed is taken for one that the
 * whole house stands behind.
 */
export const housePressure = fact('housePressure', { of: water, type: quantity('pressure'), read })

function read({ ask, listed }: Context): Answer {
  const { things, more } = listed(pressureReducer)
  const settings = things.map((reducer) => ask('setPressure', reducer))
  const pressures = [ask('staticPressure'), ...settings]
  const missing = [...pressures.flatMap((one) => one.missing), ...uncounted(pressureReducer, more)]
  const { low, high } = atLeastZero(smallestOf(pressures))
  const least = more > 0 ? 0 : low
  return { ...rebound([], least, high), missing: least === high ? [] : missing }
}
