import type { KindSpec } from '../kind.js'
import { portsOf } from '../ports.js'
import type { PathItem } from '../thing.js'
import { nearestIn, type ProblemList, type Steps } from './problems.js'
import { describe, textOf } from './shapes.js'

interface PathReading {
  readonly steps: Steps
  readonly problems: ProblemList
  readonly kindOf: (id: string) => KindSpec | undefined
  readonly ids: () => Iterable<string>
}

/** Reads a line's path: ports at its ends, bare ids or `CV1.out-in` between, `unknown` anywhere. */
export function readPath(raw: readonly unknown[], reading: PathReading): readonly PathItem[] {
  if (raw.length < 2) reading.problems.add('short-path', reading.steps, 'A line has at least two ends.')
  return raw.flatMap((item, index) => {
    const atEnd = index === 0 || index === raw.length - 1
    return readItem(item, { ...reading, steps: [...reading.steps, index], atEnd }) ?? []
  })
}

function readItem(raw: unknown, reading: PathReading & { readonly atEnd: boolean }): PathItem | undefined {
  const { steps, problems, atEnd } = reading
  const written = textOf(raw)
  if (written === undefined)
    return problems.add('not-a-port', steps, `A port such as "B1.supply" is expected, not ${describe(raw)}.`)
  if (written === 'unknown') return { type: 'unknown' }
  const [component = '', port] = written.split('.', 2)
  const kind = reading.kindOf(component)
  if (kind === undefined)
    return problems.add(
      'unknown-id',
      steps,
      `There is no component "${component}".`,
      nearestIn(component, reading.ids()),
    )
  const names = Object.keys(kind.ports)
  if (port === undefined) return throughItem(component, kind, reading)
  if (atEnd) return portItem({ component, port, kind }, reading)
  const [enter = '', leave] = port.split('-', 2)
  if (leave === undefined) {
    return problems.add(
      'port-inside-path',
      steps,
      `"${written}" stands inside the path; write "${component}" for its through-way, or "${component}.${names.join('-')}" to say which.`,
      { nearest: component },
    )
  }
  const wrong = [enter, leave].find((name) => !portsOf(kind).has(name))
  if (wrong === undefined) return { type: 'through', component, enter, leave }
  return problems.add(
    'unknown-port',
    steps,
    `${component}, a ${kind.spoken}, has no port "${wrong}".`,
    nearestIn(wrong, names),
  )
}

function throughItem(
  component: string,
  kind: KindSpec,
  reading: PathReading & { readonly atEnd: boolean },
): PathItem | undefined {
  const { steps, problems } = reading
  const names = Object.keys(kind.ports)
  if (reading.atEnd)
    return problems.add('port-missing', steps, `At the end of a line the port is written.`, {
      expected: names.join(' | '),
      nearest: `${component}.${names[0] ?? ''}`,
    })
  if (kind.through === undefined)
    return problems.add(
      'no-through-way',
      steps,
      `A ${kind.spoken} has no through-way; end the line at one of its ports.`,
      { expected: names.join(' | ') },
    )
  return { type: 'through', component, enter: kind.through[0], leave: kind.through[1] }
}

function portItem(
  item: { component: string; port: string; kind: KindSpec },
  { steps, problems }: PathReading,
): PathItem | undefined {
  const { component, port, kind } = item
  if (portsOf(kind).has(port)) return { type: 'port', component, port }
  return problems.add(
    'unknown-port',
    steps,
    `${component}, a ${kind.spoken}, has no port "${port}".`,
    nearestIn(port, Object.keys(kind.ports)),
  )
}
