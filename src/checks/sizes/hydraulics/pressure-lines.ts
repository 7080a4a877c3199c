import type { Context } from '../../../facts/index.js'
import { circulator, emitter, expansionTank } from '../../../model/index.js'
import { pressureAlongLoop, type LoopStep } from '../../../sizing/index.js'
import { hydraulicsOf, passageOwner, type SolvedState, tankJunction } from '../../hydraulics/index.js'
import { sizeLine, type SizeLine } from '../size-line.js'
import { setFill } from '../tank-inputs.js'

/**
 * Pressure in the state at the inlet of each circulator that runs, at the top of the house, and the lowest of them: from the
 * fill pressure, which stays where the expansion tank joins.
 */
export function pressureLines(context: Context, flows: SolvedState): readonly SizeLine[] {
  const { things, more } = context.listed(expansionTank)
  const [tank, second] = things
  const junction = tank === undefined ? undefined : tankJunction(hydraulicsOf(context), tank.id)
  const still = flows.solution.heads.get(junction ?? '')
  if (tank === undefined || second !== undefined || more > 0 || still === undefined) {
    const missing = [{ subject: tank?.id ?? expansionTank.name, fact: tank === undefined ? 'count' : 'system' }]
    return [{ name: `pressures while ${flows.name}`, state: 'open', missing }]
  }
  const places = [...suctions(context, flows, still), ...topOf(context, flows, still)]
  return places.map((place) => pressureLine(context, flows, place)).concat(lowest(context, flows, places))
}

interface Place {
  readonly of: string
  readonly name: string
  readonly headChange: number
  readonly elevation: number
}

function suctions(context: Context, { solution }: SolvedState, still: number): readonly Place[] {
  return context.listed(circulator).things.flatMap(({ id }) => {
    const head = solution.heads.get(`${id}.in`)
    const runs = solution.pumps.some((pump) => passageOwner(pump) === id)
    return head === undefined || !runs ? [] : [{ of: id, name: 'suction', headChange: head - still, elevation: 0 }]
  })
}

/** The highest emitter that water passes; every height has to be known to say which it is. */
function topOf(context: Context, { solution }: SolvedState, still: number): readonly Place[] {
  const tops = context.listed(emitter).things.flatMap((thing) => {
    const { id } = thing
    const top = context.ask('topElevation', thing)
    const head = solution.heads.get(`${id}.in`)
    return top.state === 'number' && head !== undefined ? [{ id, elevation: top.low, head }] : []
  })
  const [highest] = tops.toSorted((one, other) => other.elevation - one.elevation)
  if (highest === undefined) return []
  const { id, elevation, head } = highest
  return [{ of: id, name: 'pressure at the highest emitter drawn', headChange: head - still, elevation }]
}

function pressureLine(context: Context, flows: SolvedState, place: Place): SizeLine {
  return sizeLine({ name: `${place.name} while ${flows.name}`, of: place.of }, 'pressure', (take) => {
    const loop = loopOf(flows, setFill(context, take), [place])
    return loop.sized ? { ...loop, value: loop.pressures[0] ?? NaN, valid: true } : loop
  })
}

function lowest(context: Context, flows: SolvedState, places: readonly Place[]): readonly SizeLine[] {
  if (places.length < 2) return []
  return [
    sizeLine({ name: `lowest pressure while ${flows.name}` }, 'pressure', (take) => {
      const all = places.map((place) => loopOf(flows, setFill(context, take), [place]))
      const [least] = all
        .flatMap((loop) => (loop.sized ? [loop] : []))
        .toSorted((one, other) => one.lowest - other.lowest)
      return least === undefined
        ? { sized: false, why: 'No place of the loop has a pressure.' }
        : { ...least, value: least.lowest, valid: true }
    }),
  ]
}

function loopOf(
  { density }: SolvedState,
  pressure: number,
  places: readonly Place[],
): ReturnType<typeof pressureAlongLoop> {
  const steps = places.map(({ of, headChange, elevation }): LoopStep => ({ name: of, headChange, elevation }))
  return pressureAlongLoop({ pressure, density, steps })
}
