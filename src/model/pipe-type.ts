import { choice } from './field.js'

/** What a pipe or a drain is made of; copper and PEX by their wall or barrier. */
export const pipeType = choice({
  'copper-K': 'type K copper',
  'copper-L': 'type L copper',
  'copper-M': 'type M copper',
  steel: 'black steel',
  'galvanized-steel': 'galvanized steel',
  'cast-iron': 'cast iron',
  stainless: 'stainless steel',
  brass: 'brass',
  pvc: 'PVC',
  cpvc: 'CPVC',
  abs: 'ABS',
  polypropylene: 'polypropylene',
  'pex-barrier': 'PEX with oxygen barrier',
  pex: 'PEX without oxygen barrier',
  csst: 'corrugated stainless steel tubing (CSST)',
  clay: 'clay',
  concrete: 'concrete',
})

export type PipeType = keyof (typeof pipeType)['choices']

/** Pipe that acid condensate attacks. */
export const corrodible = [
  'copper-K',
  'copper-L',
  'copper-M',
  'steel',
  'galvanized-steel',
  'cast-iron',
  'brass',
  'concrete',
] as const satisfies readonly PipeType[]
