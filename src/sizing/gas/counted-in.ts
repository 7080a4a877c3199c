import type { GasTable } from '../../tables/index.js'
import type { Step } from '../sized.js'

/** The unit in which a table counts what a pipe carries: gas, or the heat in it. */
export function countedIn({ counts }: Pick<GasTable, 'counts'>): Pick<Step, 'unit' | 'readAs'> {
  return counts === 'heatRate' ? { unit: 'W' } : { unit: 'm3/s', readAs: 'gas-flow' }
}
