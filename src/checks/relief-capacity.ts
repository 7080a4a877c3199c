import { atLeastZero, fact, rebound, type Answer, type Context } from '../facts/index.js'
import { boiler, quantity } from '../model/index.js'
import { printQuantity } from '../units/index.js'
import { printBounds } from './print-bounds.js'
import { protectingReliefs } from './protecting-reliefs.js'

/**
 * Heat that all relief valves of the boiler carry off together; zero when it has none.
 *
 * A valve that may protect the boiler, or is not listed, can only add: then the answer is at least what the known ones carry.
 */
export const reliefCapacity = fact('reliefCapacity', { of: boiler, type: quantity('heatRate'), read })

function read(context: Context): Answer {
  const { ask, installation } = context
  const { sure, possible, more, missing } = protectingReliefs(context)
  const capacities = sure.map((valve) => ask('capacity', valve))
  const own = capacities.map(atLeastZero)
  const perhaps = possible.map((valve) => atLeastZero(ask('capacity', valve)))
  const low = total(own.map((one) => one.low))
  const high = more ? Infinity : total([...own, ...perhaps].map((one) => one.high))
  const print = (capacity: number): string => printQuantity(capacity, 'heatRate', installation.units)
  const witness = sure.map((valve) => `${valve.id} ${printBounds(atLeastZero(ask('capacity', valve)), print)}`)
  const open = [...capacities.flatMap((one) => one.missing), ...missing]
  return { ...rebound([], low, high), witness, missing: low === high ? [] : open }
}

function total(amounts: readonly number[]): number {
  return amounts.reduce((sum, amount) => sum + amount, 0)
}
