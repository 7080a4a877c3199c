import { closable, type Thing } from '../model/index.js'

/** Where water goes at a port while the circuit runs. */
export type FlowEnd = 'enters' | 'leaves'

const ends: ReadonlyMap<string, FlowEnd> = new Map([
  ...[
    'in',
    'return',
    'hot',
    'coilIn',
    'hotIn',
    'coldIn',
    'primaryIn',
    'secondaryIn',
    'boilerSupply',
    'systemReturn',
  ].map((port) => [port, 'enters'] as const),
  ...['out', 'supply', 'mixed', 'coilOut', 'hotOut', 'coldOut', 'primaryOut', 'secondaryOut'].map(
    (port) => [port, 'leaves'] as const,
  ),
  ['boilerReturn', 'leaves'],
  ['systemSupply', 'leaves'],
])

/** What the name of a port says of the flow in it. A valve that a hand shuts works either way round and says nothing. */
export function flowEnd({ kind }: Thing, port: string): FlowEnd | undefined {
  if (kind.families.some((family) => family.name === closable.name)) return undefined
  return ends.get(port)
}
