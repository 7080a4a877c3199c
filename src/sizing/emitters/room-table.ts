import { sized, type Sizing } from '../sizing.js'
import { type HeatedRoom, roomOutput, roomWater } from './rooms.js'

/** What a mean water temperature does in a room. */
export interface RoomLine {
  readonly name: string
  /** W at the mean water temperature asked about. */
  readonly output: Sizing
  /** 1, output over load. */
  readonly cover: Sizing
  /** K, mean water temperature that carries the load. */
  readonly needed: Sizing
  /** K by which the water asked about lies above what is needed. */
  readonly margin: Sizing
}

/**
 * All rooms at a mean water temperature. A room that cannot be sized says why; the others are still there.
 *
 * @param water K, mean of supply and return
 * @example
 * roomTable(rooms, 333.15).map(({ name, needed }) => [name, needed])
 */
export function roomTable(rooms: readonly HeatedRoom[], water: number): readonly RoomLine[] {
  return rooms.map((room) => {
    const [output, needed] = [roomOutput(room, water), roomWater(room)]
    return { name: room.name, output, cover: coverOf(output, room.load), needed, margin: marginOf(needed, water) }
  })
}

/** The room that sets the curve. */
export interface DecidingRoom {
  readonly name: string
  /** K, mean water temperature that carries its load. */
  readonly needed: Sizing
  /** Rooms that could not be counted. */
  readonly uncounted: readonly string[]
}

/**
 * The room that needs the warmest water and so sets the curve of all; nothing where no room could be counted.
 *
 * @example
 * decidingRoom(rooms)?.name // 'dining'
 */
export function decidingRoom(rooms: readonly HeatedRoom[]): DecidingRoom | undefined {
  const lines = rooms.map((room) => ({ name: room.name, needed: roomWater(room) }))
  const uncounted = lines.filter(({ needed }) => !needed.sized).map(({ name }) => name)
  const [warmest] = lines
    .flatMap(({ name, needed }) => (needed.sized ? [{ name, needed }] : []))
    .toSorted((one, other) => other.needed.value - one.needed.value)
  return warmest === undefined ? undefined : { ...warmest, uncounted }
}

function coverOf(output: Sizing, load: number): Sizing {
  if (!output.sized) return output
  if (load <= 0) return { sized: false, why: 'A room without load has no cover.' }
  const value = output.value / load
  return sized({
    ...output,
    value,
    working: [
      ...output.working,
      { name: 'load', value: load, unit: 'W' },
      { name: 'output over load', value, unit: '1' },
    ],
  })
}

function marginOf(needed: Sizing, water: number): Sizing {
  if (!needed.sized) return needed
  const value = water - needed.value
  return sized({ ...needed, value, working: [...needed.working, { name: 'margin', value, unit: 'K' }] })
}
