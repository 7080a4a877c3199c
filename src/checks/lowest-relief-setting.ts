import { boundsOf, fact, unknown, type Answer, type Context } from '../facts/index.js'
import { boiler, quantity } from '../model/index.js'
import { lowestOf } from './lowest-of.js'
import { aReliefValve, protectingReliefs } from './protecting-reliefs.js'

/**
 * Lowest pressure at which a relief valve of the boiler opens.
 *
 * A valve that may protect the boiler too, or is not listed, can only open lower: then the answer is at most the lowest that
 * is known. Without any known setting there is no number.
 */
export const lowestReliefSetting = fact('lowestReliefSetting', { of: boiler, type: quantity('pressure'), read })

function read(context: Context): Answer {
  const { ask, installation } = context
  const { sure, possible, more, missing: others } = protectingReliefs(context)
  const settings = sure.map((valve) => ({ name: valve.id, answer: ask('setPressure', valve) }))
  const perhaps = possible.map((valve) => ask('setPressure', valve))
  const missing = [...settings.flatMap(({ answer }) => answer.missing), ...others]
  if (!settings.some(({ answer }) => Number.isFinite(boundsOf(answer).high))) {
    return unknown({ missing: missing.length > 0 ? missing : [aReliefValve] })
  }
  return lowestOf(settings, { units: installation.units, perhaps, more, missing })
}
