import { atLeastZero, fact, rebound, type Answer, type Context } from '../facts/index.js'
import { quantity, transformer, type Thing } from '../model/index.js'
import { transformerLoad, type Sized } from '../sizing/index.js'
import { printQuantity } from '../units/index.js'
import { possibleStates, statesOf, type NamedState } from './energized-states.js'
import { printBounds } from './print-bounds.js'

/**
 * Most power that the transformer delivers at once: all that draws steadily, and the switched devices of the declared state
 * that draws most.
 *
 * While states may be missing, up to everything at once; a switched device that no state energizes may run on top of any.
 * Devices that are not listed, or whose power is not known, can only add.
 */
export const load = fact('load', { of: transformer, type: quantity('apparentPower'), read })

function read(context: Context): Answer {
  const { ask, find, installation } = context
  const feeds = ask('feeds')
  const fed = feeds.state === 'list' ? [...new Set(feeds.members)].flatMap((id) => find(id) ?? []) : []
  const devices = fed.map((thing) => ({ thing, power: ask('power', thing) }))
  const declared = statesOf(
    context,
    fed.filter((thing) => thing.kind.draws !== 'steady').map(({ id }) => id),
  )
  const surely = loadOf(devices, 'low', declared.states)
  const most = loadOf(devices, 'high', possibleStates(declared))
  const complete = feeds.state === 'list' && feeds.complete
  const [low, high] = [surely.value, complete ? most.value : Infinity]
  const print = (power: number): string => printQuantity(power, 'apparentPower', installation.units)
  const powers = new Map(devices.map(({ thing, power }) => [thing.id, atLeastZero(power)]))
  const witness = surely.working
    .slice(0, -1)
    .map(({ name, value }) => `${name} ${printBounds(powers.get(name) ?? { low: value, high: value }, print)}`)
  const missing = [...feeds.missing, ...devices.flatMap(({ power }) => power.missing), ...declared.missing]
  return { ...rebound([], low, high), witness, missing: low === high ? [] : missing }
}

interface Device {
  readonly thing: Thing
  readonly power: Answer
}

/** A kind that does not say how it draws counts as switched at the low end and as steady at the high end. */
function loadOf(devices: readonly Device[], end: 'low' | 'high', states: readonly NamedState[]): Sized {
  const isSteady = ({ thing }: Device): boolean =>
    end === 'low' ? thing.kind.draws === 'steady' : thing.kind.draws !== 'switched'
  const draw = ({ thing, power }: Device): { readonly id: string; readonly power: number } => ({
    id: thing.id,
    power: atLeastZero(power)[end],
  })
  return transformerLoad({
    steady: devices.filter(isSteady).map(draw),
    switched: devices.filter((device) => !isSteady(device)).map(draw),
    states,
  })
}
