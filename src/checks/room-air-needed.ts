import { atLeastZero, fact, rebound, type Answer, type Context } from '../facts/index.js'
import { quantity, space } from '../model/index.js'
import { roomAirVolume } from '../sizing/index.js'
import { roomBurners, type RoomBurner } from './room-burners.js'

/**
 * Air that the boilers and water heaters of a space need around them where they take it from the room: 50 cubic feet for
 * each 1,000 Btu/h. A sealed one needs none; one of which this, or its place, is not known may need it here.
 */
export const roomAirNeeded = fact('roomAirNeeded', { of: space, type: quantity('volume'), read })

function read(context: Context): Answer {
  const { subject } = context
  const { burners, more, uncounted } = roomBurners(context, subject)
  const [least, most] = roomInput(burners)
  const [low, high] = [airFor(least), more > 0 ? Infinity : airFor(most)]
  const missing = [...burners.flatMap((burner) => burner.missing), ...uncounted]
  const witness = burners.filter(({ sure }) => sure).map(({ thing }) => `${thing.id} in ${subject.id}`)
  return { ...rebound([], low, high), witness, missing: low === high ? [] : missing }
}

/** Heat input that surely takes room air, and that of all that may; W. */
export function roomInput(burners: readonly RoomBurner[]): readonly [least: number, most: number] {
  const sum = (some: readonly RoomBurner[], end: 'low' | 'high'): number =>
    some.reduce((total, { input }) => total + atLeastZero(input)[end], 0)
  return [
    sum(
      burners.filter(({ sure }) => sure),
      'low',
    ),
    sum(burners, 'high'),
  ]
}

function airFor(heatInput: number): number {
  if (!Number.isFinite(heatInput)) return Infinity
  const air = roomAirVolume({ appliances: [{ name: 'all', heatInput, air: 'natural-draft' }] })
  return air.sized ? air.value : Infinity
}
