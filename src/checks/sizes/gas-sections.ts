import type { Context } from '../../facts/index.js'
import { fuelBurner, gasMeter, line, type Thing } from '../../model/index.js'
import type { PipedSection } from '../../sizing/index.js'
import { pipeSize } from '../../tables/index.js'
import type { Taking } from './size-line.js'
import { isInFamily } from '../of-kind.js'
import { listedPipe } from '../listed-pipe.js'

/** A gas line as it is drawn: what comes before it, seen from the meter, and the appliances that stand on it. */
export interface GasLine {
  readonly thing: Thing
  /** Id of the line that feeds it. */
  readonly after: string | undefined
  readonly burners: readonly Thing[]
}

/** The drawn gas lines, from the meter on. */
export function gasLines({ listed, find }: Context): readonly GasLine[] {
  const lines = listed(line).things.filter(({ medium }) => medium === 'gas')
  const meters = listed(gasMeter).things.map(({ id }) => id)
  return reachedFrom(meters, lines).map(({ thing, after }) => ({
    thing,
    after,
    burners: componentsOf(thing)
      .flatMap((id) => find(id) ?? [])
      .filter((one) => isInFamily(one, fuelBurner)),
  }))
}

/**
 * Gas lines as sections, where all are listed. A line that runs on through a tee counts with the load of all behind it over
 * its whole length, which is the careful side.
 */
export function gasSections(context: Context, take: Taking): readonly PipedSection[] {
  for (const kind of [line, gasMeter]) take.all(kind.name, context.listed(kind))
  return gasLines(context).map((drawn) => sectionOf(context, take, drawn))
}

type Reached = Omit<GasLine, 'burners'>

/** Walks from the meter outwards: every line comes after the line that met it first. */
function reachedFrom(meters: readonly string[], lines: readonly Thing[]): readonly Reached[] {
  const metBy = new Map<string, string | undefined>(meters.map((id) => [id, undefined]))
  const reached: Reached[] = []
  const seen = new Set<Thing>()
  let ring = touching(meters, lines, seen)
  while (ring.length > 0) {
    for (const thing of ring) reached.push(reach(thing, metBy))
    for (const thing of ring) seen.add(thing)
    ring = touching([...metBy.keys()], lines, seen)
  }
  return reached
}

function touching(ids: readonly string[], lines: readonly Thing[], seen: ReadonlySet<Thing>): readonly Thing[] {
  const met = new Set(ids)
  return lines.filter((thing) => !seen.has(thing) && componentsOf(thing).some((id) => met.has(id)))
}

function reach(thing: Thing, metBy: Map<string, string | undefined>): Reached {
  const parts = componentsOf(thing)
  const met = parts.find((id) => metBy.has(id))
  for (const id of parts.filter((one) => !metBy.has(one))) metBy.set(id, thing.id)
  return { thing, after: met === undefined ? undefined : metBy.get(met) }
}

function componentsOf({ path }: Thing): readonly string[] {
  return (path ?? []).flatMap((item) => (item.type === 'unknown' ? [] : [item.component]))
}

function sectionOf(context: Context, take: Taking, { thing, after, burners }: GasLine): PipedSection {
  const { ask } = context
  return {
    id: thing.id,
    ...(after === undefined ? {} : { after }),
    length: take.number(ask('pipe.length', thing)),
    input: burners.reduce((sum, one) => sum + take.number(ask('input', one)), 0),
    bore: boreOfLine(context, take, thing),
  }
}

function boreOfLine({ ask }: Context, take: Taking, thing: Thing): PipedSection['bore'] {
  const type = take.word(ask('pipe.type', thing))
  if (type === 'csst') return { ehd: take.number(ask('pipe.ehd', thing)) }
  const name = listedPipe(type)
  const size = take.number(ask('pipe.size', thing))
  return { insideDiameter: (name === undefined ? undefined : pipeSize(name, size)?.inside) ?? NaN }
}
