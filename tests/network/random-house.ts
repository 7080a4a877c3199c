import fc from 'fast-check'
import { mediumGroup, portsOf, type Medium } from '../../src/model/index.js'
import { part, type House, type Part, type Run } from './build.js'
import { componentKinds, testModel } from './kinds.js'

interface Port {
  readonly component: string
  readonly port: string
  readonly medium: Medium
}

const names = componentKinds.map((kind) => kind.name)
const likely = ['relief', 'stopValve', 'tee', 'pump', 'backflow', 'service', 'drain', 'neutralizer']

const anyPart = fc.record({
  kind: fc.oneof(fc.constantFrom(...names), fc.constantFrom(...likely)),
  locked: fc.constantFrom('open', 'no', undefined),
  checkBuiltIn: fc.constantFrom('yes', 'no', undefined),
  material: fc.constantFrom('iron', 'plastic', undefined),
  branches: fc.constantFrom(1, 2, 3),
})

/** How complete a house is drawn: with `every` port joined or capped and every value known, nothing is left to ask. */
export type Drawn = 'every' | 'some'

/** A house of 2 to 12 components round a boiler, its ports joined at random: rings, stray pieces and all. */
export function anyHouse(drawn: Drawn): fc.Arbitrary<House> {
  return fc
    .record({
      parts: fc.array(anyPart, { minLength: 1, maxLength: 11 }),
      order: fc.array(fc.nat(), { minLength: 60, maxLength: 60 }),
      leave: fc.array(fc.boolean(), { minLength: 60, maxLength: 60 }),
      counted: fc.constantFrom('by kind', 'in all', 'not'),
    })
    .map(({ parts: loose, order, leave, counted }) => {
      const parts = [part('B1', 'boiler'), ...loose.map((each, index) => partOf(each, `P${index}`, drawn))]
      const ports = shuffled(parts.flatMap(portsOfPart), order)
      const { runs, rest } = joined(ports, leave, drawn)
      const capped = rest.filter((_port, index) => drawn === 'every' || leave[59 - index] === true)
      const lines = merged(runs, leave)
      const counts = countsOf(counted, parts, lines)
      return { parts: parts.map((each) => cappedPart(each, capped)), runs: lines, counts }
    })
}

function partOf(loose: typeof anyPart extends fc.Arbitrary<infer T> ? T : never, id: string, drawn: Drawn): Part {
  const {
    kind,
    locked = drawn === 'every' ? 'no' : undefined,
    checkBuiltIn = drawn === 'every' ? 'no' : undefined,
    branches,
  } = loose
  const material = loose.material ?? (drawn === 'every' ? 'iron' : undefined)
  const fields = Object.entries({ locked, checkBuiltIn, material, branches }).flatMap(([field, value]) =>
    value !== undefined && testModel.leaves.get(kind)?.has(field) === true ? [[field, value] as const] : [],
  )
  return part(id, kind, { values: Object.fromEntries(fields) })
}

function portsOfPart({ id, kind, values = {} }: Part): readonly Port[] {
  const spec = testModel.kinds.get(kind)!
  const count = Number(values.branches ?? 0)
  const ports = Object.keys(spec.ports).flatMap((port) =>
    port.endsWith('*') ? Array.from({ length: count }, (_each, index) => `${port.slice(0, -1)}${index + 1}`) : [port],
  )
  return ports.map((port) => ({ component: id, port, medium: carried(portsOf(spec).mediumOf(port)!, id, port) }))
}

/** What suits either water stands in heating water mostly, else in drinking water, now and then in both. */
function carried(medium: Medium, id: string, port: string): Medium {
  if (medium !== 'eitherWater') return medium
  const number = Number(id.slice(1)) % 6
  return number === 5 || (number === 2 && port === 'a') ? 'potableCold' : 'heatingWater'
}

function shuffled(ports: readonly Port[], order: readonly number[]): readonly Port[] {
  return ports
    .map((port, index) => ({ port, at: order[index % order.length]! }))
    .sort((a, b) => a.at - b.at)
    .map(({ port }) => port)
}

interface Joined {
  readonly runs: readonly Run[]
  readonly rest: readonly Port[]
}

/** Joins neighbors of one group of media two by two and leaves some alone. */
function joined(ports: readonly Port[], leave: readonly boolean[], drawn: Drawn): Joined {
  const groups = [...new Set(ports.map(({ medium }) => mediumGroup(medium)))]
  const pairs = groups.flatMap((name) => pairsOf(ports.filter(({ medium }) => mediumGroup(medium) === name)))
  const isAlone = (index: number): boolean => index % 3 === 2 && leave[index % leave.length] === true
  const runs = pairs.flatMap(([from, to], index) => {
    if (to === undefined || isAlone(index)) return []
    return [{ id: `L${index}`, medium: from.medium, path: pathOf(from, to, drawn === 'some' && index % 5 === 4) }]
  })
  const rest = pairs.flatMap(([from, to], index) => (to === undefined ? [from] : isAlone(index) ? [from, to] : []))
  return { runs, rest }
}

function pairsOf(ports: readonly Port[]): readonly (readonly [Port, Port | undefined])[] {
  return ports.flatMap((port, index) => (index % 2 === 0 ? [[port, ports[index + 1]] as const] : []))
}

function pathOf(from: Port, to: Port, gap: boolean): readonly string[] {
  const ends = [`${from.component}.${from.port}`, `${to.component}.${to.port}`] as const
  return gap ? [ends[0], 'unknown', ends[1]] : ends
}

/** Runs that meet in one component are sometimes drawn as one line through it. */
function merged(runs: readonly Run[], leave: readonly boolean[]): readonly Run[] {
  const lines: Run[] = []
  for (const each of runs) {
    const at = leave[lines.length % leave.length] === true ? lines.findIndex((line) => meet(line, each)) : -1
    if (at < 0) lines.push(each)
    else lines[at] = throughJoint(lines[at]!, each)
  }
  return lines
}

function meet(one: Run, other: Run): boolean {
  const [before, leaving] = one.path.at(-1)!.split('.')
  const [behind, entering] = other.path[0]!.split('.')
  return before === behind && leaving !== entering && one.medium === other.medium
}

function throughJoint(one: Run, other: Run): Run {
  const [component, leaving] = one.path.at(-1)!.split('.')
  const entering = other.path[0]!.split('.')[1]
  return { ...one, path: [...one.path.slice(0, -1), `${component}.${leaving}-${entering}`, ...other.path.slice(1)] }
}

function cappedPart(each: Part, capped: readonly Port[]): Part {
  const ports = capped.filter(({ component }) => component === each.id).map(({ port }) => port)
  return ports.length === 0 ? each : { ...each, capped: ports }
}

function countsOf(counted: string, parts: readonly Part[], runs: readonly Run[]): Readonly<Record<string, number>> {
  if (counted === 'not') return {}
  if (counted === 'in all') return { all: parts.length + runs.length }
  return Object.fromEntries(names.map((name) => [name, parts.filter(({ kind }) => kind === name).length]))
}
