import { atLeastZero, fact, rebound, type Answer, type Context, type Missing } from '../facts/index.js'
import { boiler, quantity, space, waterHeater, type Thing } from '../model/index.js'
import { roomAirVolume } from '../sizing/index.js'
import { uncounted } from './uncounted.js'

/**
 * Air that the boilers and water heaters of a space need around them where they take it from the room: 50 cubic feet for
 * each 1,000 Btu/h. A sealed one needs none; one of which this, or its place, is not known may need it here.
 */
export const roomAirNeeded = fact('roomAirNeeded', { of: space, type: quantity('volume'), read })

function read(context: Context): Answer {
  const { listed, subject } = context
  const [boilers, heaters] = [listed(boiler), listed(waterHeater)]
  const burners = [
    ...boilers.things.map((thing) => burnerOf(context, thing, 'sealedCombustion', 'yes')),
    ...heaters.things.map((thing) => burnerOf(context, thing, 'venting', 'direct')),
  ].filter((burner) => burner.place !== 'elsewhere' && burner.sealed !== true)
  const sure = burners.filter(({ place, sealed }) => place === 'here' && sealed === false)
  const low = airFor(sure.reduce((sum, { input }) => sum + atLeastZero(input).low, 0))
  const more = boilers.more + heaters.more
  const high = more > 0 ? Infinity : airFor(burners.reduce((sum, { input }) => sum + atLeastZero(input).high, 0))
  const counts: readonly Missing[] = [...uncounted(boiler, boilers.more), ...uncounted(waterHeater, heaters.more)]
  const missing = [...burners.flatMap((burner) => burner.missing), ...counts]
  const witness = sure.map(({ id }) => `${id} in ${subject.id}`)
  return { ...rebound([], low, high), witness, missing: low === high ? [] : missing }
}

interface Burner {
  readonly id: string
  readonly place: 'here' | 'elsewhere' | 'unknown'
  readonly sealed: boolean | undefined
  readonly input: Answer
  readonly missing: readonly Missing[]
}

function burnerOf({ ask, subject }: Context, thing: Thing, field: string, sealedWord: string): Burner {
  const [place, air, input] = [ask('space', thing), ask(field, thing), ask('input', thing)]
  return {
    id: thing.id,
    place: place.state === 'word' ? (place.word === subject.id ? 'here' : 'elsewhere') : 'unknown',
    sealed: air.state === 'word' ? air.word === sealedWord : undefined,
    input,
    missing: [...place.missing, ...air.missing, ...input.missing],
  }
}

function airFor(heatInput: number): number {
  if (!Number.isFinite(heatInput)) return Infinity
  const air = roomAirVolume({ appliances: [{ name: 'all', heatInput, air: 'natural-draft' }] })
  return air.sized ? air.value : Infinity
}
