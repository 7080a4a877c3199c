import { boundsOf, fact, rebound, unknown, type Answer, type Context } from '../facts/index.js'
import { expansionTank, fillDevice, potableExpansionTank, quantity, water } from '../model/index.js'
import { askOnce } from './ask-once.js'

/**
 * How far the charge of the tank lies from the pressure to which the system is filled, to either side. Read with water on the
 * tank, the gauge tells the system and not the charge: then it is not known.
 */
export const chargeGap = fact('chargeGap', {
  of: expansionTank,
  type: quantity('pressure'),
  read: (context) => gap(context, fillPressure(context)),
})

/**
 * How far the charge of the tank lies from the pressure of the house, to either side. Read with water on the tank, the gauge
 * tells the house and not the charge: then it is not known.
 */
export const potableChargeGap = fact('chargeGap', {
  of: potableExpansionTank,
  type: quantity('pressure'),
  read: (context) => gap(context, askOnce(context, water, 'housePressure')),
})

function fillPressure({ ask, listed }: Context): Answer {
  const { things, more } = listed(fillDevice)
  const [device, second] = things
  return device === undefined || second !== undefined || more > 0
    ? unknown({ missing: [{ subject: fillDevice.name, fact: 'count' }] })
    : ask('setPressure', device)
}

function gap({ ask, subject }: Context, against: Answer): Answer {
  const empty = ask('prechargeWaterSideEmpty')
  if (empty.state !== 'word') return unknown({ missing: empty.missing })
  if (empty.word === 'no') return unknown({ missing: [{ subject: subject.id, fact: 'precharge' }] })
  const charge = ask('precharge')
  const [one, other] = [boundsOf(charge), boundsOf(against)]
  const [least, most] = [one.low - other.high, one.high - other.low]
  const low = least <= 0 && most >= 0 ? 0 : Math.min(Math.abs(least), Math.abs(most))
  return rebound([charge, against], low, Math.max(Math.abs(least), Math.abs(most)))
}
