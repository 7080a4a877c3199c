import { atLeastZero, unknown, word, type Context, type Missing } from '../facts/index.js'
import { combustionAirOpening, space, waterHeater } from '../model/index.js'
import { defineCheck } from '../rulebook/index.js'
import { outdoorOpenings } from '../sizing/index.js'
import { openingInto, type AirOpening } from './air-opening.js'
import { isOfKind } from './of-kind.js'
import { roomInput } from './room-air-needed.js'
import { roomBurners, type RoomBurner } from './room-burners.js'
import { uncounted } from './uncounted.js'

/** Whether openings to the outdoors bring the burners of the space air enough: two, one high and one low, or a single one high up. */
export const outdoorAirEnough = defineCheck('outdoorAirEnough', {
  of: space,
  answers: ['yes', 'no'],
  answerable: true,
  judge: (context) => {
    const { subject, listed } = context
    const room = roomBurners(context, subject)
    const [least, most] = roomInput(room.burners)
    const connectors = connectorArea(context, room.burners)
    const { things, more } = listed(combustionAirOpening)
    const openings = things.map((thing) => openingInto(context, thing, subject))
    const surest = openings.flatMap((opening) => opening.surest ?? [])
    const best = openings.flatMap((opening) => opening.best ?? [])
    const witness = surest.map(({ id }) => id)
    if (room.more === 0 && isEnough(surest, { heatInput: most, connectors })) return word('yes', { witness })
    if (more === 0 && !isEnough(best, { heatInput: least, connectors: 0 })) return word('no', { witness })
    const missing: readonly Missing[] = [
      ...openings.flatMap((opening) => opening.missing),
      ...room.burners.flatMap((burner) => burner.missing),
      ...uncounted(combustionAirOpening, more),
      ...room.uncounted,
    ]
    return unknown({ missing })
  },
})

const isHeater = isOfKind(waterHeater)

/** Vent connectors of all that may burn here; a boiler does not state the area of its own. */
function connectorArea({ ask }: Context, burners: readonly RoomBurner[]): number {
  return burners.reduce(
    (sum, { thing }) => sum + (isHeater(thing) ? atLeastZero(ask('draftHoodArea', thing)).high : Infinity),
    0,
  )
}

interface Asked {
  /** W */
  readonly heatInput: number
  /** m2, of all vent connectors: a single opening is no smaller. */
  readonly connectors: number
}

function isEnough(openings: readonly AirOpening[], asked: Asked): boolean {
  const high = openings.filter(({ position }) => position !== 'low')
  const low = openings.filter(({ position }) => position !== 'high')
  const serves = (opening: AirOpening): boolean => opening.area >= areaFor(asked, opening.way)
  return (
    high.some(({ area }) => area >= areaFor(asked, 'single')) ||
    high.some((one) => serves(one) && low.some((other) => other !== one && serves(other)))
  )
}

function areaFor({ heatInput, connectors }: Asked, way: AirOpening['way'] | 'single'): number {
  if (!Number.isFinite(heatInput + (way === 'single' ? connectors : 0))) return Infinity
  const appliances = [{ name: 'all', heatInput, air: 'natural-draft' }] as const
  const connectorAreas = way === 'single' ? [connectors] : []
  const area = outdoorOpenings({ appliances, way, connectorAreas, indoorShare: 0 })
  return area.sized ? area.value : Infinity
}
