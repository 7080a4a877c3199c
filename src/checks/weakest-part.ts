import { boundsOf, fact, unknown, type Answer, type Context, type Missing } from '../facts/index.js'
import { boiler, pressurePart, quantity, type Thing } from '../model/index.js'
import { reachedThings } from '../network/index.js'
import { lowestOf } from './lowest-of.js'
import { isInFamily } from './of-kind.js'

/**
 * Lowest pressure that a maker allows for any other part in the boiler's heating water; the boiler has `mawp`.
 *
 * Everything that the water surely reaches counts, with all valves open. While a part lacks its figure, or the water may
 * reach parts that are not drawn, the answer is at most the lowest that is known.
 */
export const weakestPart = fact('weakestPart', { of: boiler, type: quantity('pressure'), answerable: true, read })

function read({ subject, network, ask, installation }: Context): Answer {
  const reached = reachedThings(network, { component: subject.id, medium: 'heatingWater' }, { crossing: true })
  const limits = reached.things.filter(isPressurePart).map((part) => ({ part, limit: ask('maximumPressure', part) }))
  const missing: readonly Missing[] = [...limits.flatMap(({ limit }) => limit.missing), ...reached.missing]
  const known = limits.filter(({ limit }) => Number.isFinite(boundsOf(limit).high))
  if (known.length === 0) return unknown({ missing: missing.length > 0 ? missing : [aPressurePart] })
  return lowestOf(
    limits.map(({ part, limit }) => ({ name: part.id, answer: limit })),
    { units: installation.units, perhaps: [], more: reached.open, missing },
  )
}

const aPressurePart: Missing = { subject: pressurePart.name, fact: 'count' }

function isPressurePart(thing: Thing): boolean {
  return isInFamily(thing, pressurePart)
}
