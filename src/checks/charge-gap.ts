import { boundsOf, fact, rebound, unknown, type Answer, type Context } from '../facts/index.js'
import { expansionTank, fillValve, quantity } from '../model/index.js'

/** How far the charge of the tank lies from the pressure to which the system is filled, to either side. */
export const chargeGap = fact('chargeGap', { of: expansionTank, type: quantity('pressure'), read })

function read({ ask, listed }: Context): Answer {
  const { things, more } = listed(fillValve)
  const missing = more > 0 || things.length !== 1 ? [{ subject: fillValve.name, fact: 'count' }] : []
  const [valve] = things
  if (valve === undefined || missing.length > 0) return unknown({ missing })
  const charge = ask('precharge')
  const fill = ask('setPressure', valve)
  const [one, other] = [boundsOf(charge), boundsOf(fill)]
  const [least, most] = [one.low - other.high, one.high - other.low]
  const low = least <= 0 && most >= 0 ? 0 : Math.min(Math.abs(least), Math.abs(most))
  return rebound([charge, fill], low, Math.max(Math.abs(least), Math.abs(most)))
}
