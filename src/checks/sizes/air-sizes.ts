import type { Context } from '../../facts/index.js'
import { building, combustionAirOpening, space, waterHeater, type Thing } from '../../model/index.js'
import {
  heatInputForRoom,
  louverFreeArea,
  mechanicalAir,
  openingsBetweenRooms,
  outdoorOpenings,
  roomAirVolume,
  roomAirVolumeByInfiltration,
  type AirAppliance,
  type Sizing,
} from '../../sizing/index.js'
import { askOnce } from '../ask-once.js'
import { isOfKind } from '../of-kind.js'
import { roomBurners, type RoomBurner } from '../room-burners.js'
import { chain, stated } from './chain.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'

/** Air for the burners of each room that take it from there: room, openings and fan that would give it. */
export function airSizes(context: Context): readonly SizeLine[] {
  const rooms = context.listed(space).things.filter((room) => mayBurnRoomAir(context, room))
  const louvered = context.listed(combustionAirOpening).things.filter((one) => hasLouverOnly(context, one))
  return [...rooms.flatMap((room) => roomLines(context, room)), ...louvered.map((one) => louverLine(context, one))]
}

/** A burner of which nobody knows the place is told of where it is asked for, not in every room. */
function mayBurnRoomAir(context: Context, room: Thing): boolean {
  return roomBurners(context, room).burners.some(({ thing }) => context.ask('space', thing).state === 'word')
}

function roomLines(context: Context, room: Thing): readonly SizeLine[] {
  const of = room.id
  const { ask } = context
  const taken = (take: Taking): readonly AirAppliance[] => appliancesOf(context, take, room)
  const outdoor = (take: Taking, way: 'two-direct' | 'two-horizontal-ducts'): Sizing =>
    outdoorOpenings({ appliances: taken(take), way, connectorAreas: [], indoorShare: 0 })
  return [
    sizeLine({ name: 'air about the burners, standard method', of }, 'volume', (take) =>
      roomAirVolume({ appliances: taken(take) }),
    ),
    sizeLine({ name: 'air about the burners by the measured air changes', of }, 'volume', (take) =>
      roomAirVolumeByInfiltration({
        appliances: taken(take),
        airChanges: take.number(askOnce(context, building, 'airChanges')) / secondsOfHour,
      }),
    ),
    sizeLine({ name: 'heat input that the room has air for', of }, 'heatRate', (take) =>
      heatInputForRoom(take.number(ask('volume', room))),
    ),
    sizeLine({ name: 'each of two openings outdoors, through the wall or by vertical ducts', of }, 'area', (take) =>
      outdoor(take, 'two-direct'),
    ),
    sizeLine({ name: 'each of two openings outdoors by horizontal ducts', of }, 'area', (take) =>
      outdoor(take, 'two-horizontal-ducts'),
    ),
    sizeLine({ name: 'single opening outdoors', of }, 'area', (take) => single(context, take, room)),
    sizeLine({ name: 'each of two openings to a room on the same story', of }, 'area', (take) =>
      openingsBetweenRooms({ appliances: taken(take), stories: 'same' }),
    ),
    sizeLine({ name: 'openings to a room on another story together', of }, 'area', (take) =>
      openingsBetweenRooms({ appliances: taken(take), stories: 'different' }),
    ),
    sizeLine({ name: 'air for a fan to bring', of, readAs: 'air' }, 'volumeFlow', (take) => mechanicalAir(taken(take))),
  ]
}

const secondsOfHour = 3600

/** Everything that takes the air of a room; what may, and what may stand here, is missing until somebody says. */
function appliancesOf(context: Context, take: Taking, room: Thing): readonly AirAppliance[] {
  const { burners, uncounted } = roomBurners(context, room)
  take.note(uncounted)
  return burners.map(({ thing, input, missing, sure }) => {
    if (!sure) take.note(missing)
    return { name: thing.id, heatInput: take.number(input), air: draftOf(context, take, thing) }
  })
}

const isHeater = isOfKind(waterHeater)

/** A boiler does not say how it draws: natural draft asks for more air, the careful side. */
function draftOf({ ask }: Context, take: Taking, thing: Thing): AirAppliance['air'] {
  if (!isHeater(thing)) return 'natural-draft'
  return take.word(ask('venting', thing)) === 'fan-assisted' ? 'fan-assisted' : 'natural-draft'
}

function single(context: Context, take: Taking, room: Thing): Sizing {
  const appliances = appliancesOf(context, take, room)
  const hooded = roomBurners(context, room).burners.filter((burner) => hasHood(context, burner))
  const connectorAreas = hooded.map(({ thing }) => take.number(context.ask('draftHoodArea', thing)))
  const opening = outdoorOpenings({ appliances, way: 'single', connectorAreas, indoorShare: 0 })
  if (!opening.sized || hooded.length === appliances.length) return opening
  return { ...opening, assumed: [...opening.assumed, 'vent connectors without a draft hood are no larger together'] }
}

function hasHood({ ask }: Context, { thing }: RoomBurner): boolean {
  const venting = isHeater(thing) ? ask('venting', thing) : undefined
  return venting?.state === 'word' && venting.word === 'draft-hood'
}

function hasLouverOnly({ ask }: Context, one: Thing): boolean {
  return ask('grossArea', one).state === 'number' && ask('area', one).state !== 'number'
}

function louverLine({ ask }: Context, one: Thing): SizeLine {
  return sizeLine({ name: 'free area of the opening', of: one.id }, 'area', (take) => {
    const louver = louverOf(take.word(ask('louver', one)))
    const grossArea = take.number(ask('grossArea', one))
    return chain(stated('the hole in the wall', grossArea, 'm2'), () => louverFreeArea({ grossArea, louver }))
  })
}

function louverOf(word: string): 'none' | 'metal' | 'wood' {
  return word === 'metal' || word === 'wood' ? word : 'none'
}
