import { fact, unknown, type Answer, type Context, type Missing } from '../../facts/index.js'
import { circulator, expansionTank, fillDevice, quantity } from '../../model/index.js'
import { pressureAlongLoop } from '../../sizing/index.js'
import { printQuantity } from '../../units/index.js'
import { hydraulicsOf } from './hydraulics-of.js'
import { overStates } from './over-states.js'
import { tankJunction } from './tank-junction.js'

/**
 * Least pressure at the inlet of the circulator in any declared state: the fill pressure, which stays where the expansion tank
 * joins, with what pumps add and pipes take from there on.
 */
export const suctionPressure = fact('suctionPressure', { of: circulator, type: quantity('pressure'), read })

function read(context: Context): Answer {
  const { ask, subject, listed, installation } = context
  const tanks = listed(expansionTank)
  const fills = listed(fillDevice)
  const [tank, fill] = [tanks.things[0], fills.things[0]]
  const pressure = fill === undefined ? unknown() : ask('setPressure', fill)
  const missing: readonly Missing[] = [
    ...onlyOne(expansionTank.name, tanks),
    ...onlyOne(fillDevice.name, fills),
    ...pressure.missing,
  ]
  if (missing.length > 0 || tank === undefined || pressure.state !== 'number') return unknown({ missing })
  const hydraulics = hydraulicsOf(context)
  const junction = tankJunction(hydraulics, tank.id)
  if (junction === undefined && hydraulics.states.some(({ solved }) => solved))
    return unknown({ missing: [{ subject: tank.id, fact: 'system' }] })
  return overStates(context, {
    value: ({ solution: { heads }, density }) => {
      const [inlet, still] = [heads.get(`${subject.id}.in`), heads.get(junction ?? '')]
      if (inlet === undefined || still === undefined) return undefined
      const steps = [{ name: `inlet of ${subject.id}`, headChange: inlet - still, elevation: 0 }]
      const loop = pressureAlongLoop({ pressure: pressure.low, density, steps })
      return loop.sized ? loop.pressures[0] : undefined
    },
    choose: (values) => Math.min(...values),
    bound: (value) => [-Infinity, value],
    print: (value) => printQuantity(value, 'pressure', installation.units),
  })
}

function onlyOne(
  kind: string,
  { things, more }: { readonly things: readonly unknown[]; readonly more: number },
): readonly Missing[] {
  return things.length === 1 && more === 0 ? [] : [{ subject: kind, fact: 'count' }]
}
