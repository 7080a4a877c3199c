import type { PathItem, Thing } from '../model/index.js'
import { flowEnd, type FlowEnd } from './flow-end.js'
import type { MissingFact } from './told.js'

/**
 * What to look at where water is drawn to run both ways: the lines that run against themselves, as through a pump listed
 * from its outlet. Where each line agrees with itself and two of them meet, the first that was come to.
 */
export function drawnBothWays(disputed: Iterable<Thing>, things: ReadonlyMap<string, Thing>): readonly MissingFact[] {
  const lines = [...new Set(disputed)]
  const against = lines.filter((line) => runsAgainstItself(line, things))
  return (against.length > 0 ? against : lines.slice(0, 1)).map(({ id }) => ({ subject: id, fact: 'direction' }))
}

function runsAgainstItself({ path = [] }: Thing, things: ReadonlyMap<string, Thing>): boolean {
  const last = path.length - 1
  const said = path.flatMap((item, at) => [
    ...(at > 0 ? saidAt(item, 'enters', things) : []),
    ...(at < last ? saidAt(item, 'leaves', things) : []),
  ])
  return said.includes(true) && said.includes(false)
}

/** Whether the port by which the line comes to a component, or goes on from it, says the same of the water; nothing where it says nothing. */
function saidAt(item: PathItem, line: FlowEnd, things: ReadonlyMap<string, Thing>): readonly boolean[] {
  if (item.type === 'unknown') return []
  const component = things.get(item.component)
  const port = item.type === 'port' ? item.port : line === 'enters' ? item.enter : item.leave
  const end = component === undefined ? undefined : flowEnd(component, port)
  return end === undefined ? [] : [end === line]
}
