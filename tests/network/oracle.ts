import type { House, Part } from './build.js'
import { testModel } from './kinds.js'

/** What may not be passed, for houses in which everything is known. */
interface Refusing {
  readonly closes?: boolean
  readonly checks?: boolean
  readonly kind?: string
}

/** Spreads over the ports of a fully drawn house until nothing new is reached: slow, and without any graph. */
export function oracleReaches(house: House, kind: string, refusing: Refusing): boolean {
  const pairs = [
    ...house.runs.flatMap(({ path }) => piecesOf(path)),
    ...house.parts.flatMap((each) => openWays(each, refusing)),
  ]
  const reached = new Set(['B1.supply', 'B1.return', 'B1.relief'])
  for (let size = -1; size !== reached.size;) {
    size = reached.size
    const touched = pairs.filter((pair) => pair.some((port) => reached.has(port)))
    for (const port of touched.flat()) reached.add(port)
  }
  return [...reached].some((port) => house.parts.some((each) => each.id === port.split('.')[0] && each.kind === kind))
}

function piecesOf(path: readonly string[]): readonly (readonly [string, string])[] {
  const ports = path.flatMap((item, index) => {
    const [component = '', port = ''] = item.split('.')
    const names = index === 0 || index === path.length - 1 ? [port] : port.split('-')
    return names.map((name) => `${component}.${name}`)
  })
  return ports.flatMap((port, index) => (index % 2 === 0 ? [[port, ports[index + 1]!] as const] : []))
}

function openWays(each: Part, refusing: Refusing): readonly (readonly [string, string])[] {
  const { id, kind, values = {} } = each
  if (isRefused(each, refusing)) return []
  const branches = Array.from({ length: Number(values.branches ?? 0) }, (_branch, index) => `branch${index + 1}`)
  if (kind === 'header') return branches.map((branch) => [`${id}.main`, `${id}.${branch}`])
  if (kind === 'manifold') return branches.map((branch) => [`${id}.branch1`, `${id}.${branch}`])
  return testModel.kinds.get(kind)!.ways.map(({ between: [one, other] }) => [`${id}.${one}`, `${id}.${other}`])
}

function isRefused({ kind, values = {} }: Part, refusing: Refusing): boolean {
  const shuts = kind === 'zoneValve' || (kind === 'stopValve' && values.locked !== 'open')
  const checks = ['checkValve', 'backflow'].includes(kind) || (kind === 'pump' && values.checkBuiltIn === 'yes')
  return kind === refusing.kind || (refusing.closes === true && shuts) || (refusing.checks === true && checks)
}
