import { boundsOf, fact, rebound, unknown, type Answer, type Context, type Missing } from '../facts/index.js'
import { emitter, fillDevice, quantity } from '../model/index.js'
import { columnPressure } from '../sizing/index.js'
import { printQuantity } from '../units/index.js'
import { fluidDensity } from './fluid-density.js'

/**
 * Pressure at the boiler gauge of the cold water that stands up to the highest emitter; no margin is added.
 *
 * Emitters that are not listed, or whose height is not known, can only stand higher: then the answer is at least the column
 * up to the highest that is known. Where all stand below the gauge it is zero.
 */
export const staticPressure = fact('staticPressure', { of: fillDevice, type: quantity('pressure'), read })

function read(context: Context): Answer {
  const { listed, ask, installation } = context
  const { things, more } = listed(emitter)
  const tops = things.map((thing) => ({ thing, top: ask('topElevation', thing) }))
  const anEmitter: readonly Missing[] =
    more > 0 || things.length === 0 ? [{ subject: emitter.name, fact: 'count' }] : []
  const untold = [...tops.flatMap(({ top }) => top.missing), ...anEmitter]
  const known = tops.filter(({ top }) => Number.isFinite(boundsOf(top).low))
  if (known.length === 0) return unknown({ missing: untold })
  const lowest = Math.max(0, ...known.map(({ top }) => boundsOf(top).low))
  const highest = more > 0 ? Infinity : Math.max(0, ...tops.map(({ top }) => boundsOf(top).high))
  const fluid = fluidDensity(context)
  const low = columnPressure({ height: lowest, density: fluid.low }).value
  const high = highest === 0 ? 0 : columnPressure({ height: highest, density: fluid.high }).value
  const deciding = known.find(({ top }) => boundsOf(top).low === lowest)?.thing.id ?? 'boiler gauge'
  const witness = [
    `${deciding} ${printQuantity(lowest, 'length', installation.units)}`,
    `${fluid.spoken} ${Math.round(fluid.low)} kg/m3`,
  ]
  return { ...rebound([], low, high), witness, missing: low === high ? [] : [...untold, ...fluid.missing] }
}
