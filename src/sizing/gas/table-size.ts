import type { GasTable } from '../../tables/index.js'
import { countedIn } from './counted-in.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { tableCapacity } from './table-capacity.js'

interface TabledLoad {
  readonly table: GasTable
  /** W */
  readonly load: number
  /** J/m3 of gas; only tables that count gas ask it. */
  readonly heatingValue: number
  /** m */
  readonly length: number
}

/**
 * Smallest size of a published table that carries a load.
 *
 * @returns nominal inches; EHD for corrugated tubing
 *
 * @example
 * // 110 cfh at 60 ft, the example of the fuel gas code: value 0.75
 * tableSize({ table: gasTable('steel-natural-gas-half-inch'), load: 33000, heatingValue: 38.1e6, length: 18.288 })
 */
export function tableSize({ table, load, heatingValue, length }: TabledLoad): Sizing {
  const why = firstImpossible(
    ['load of the gas pipe', load, 'zero or more'],
    ['heating value of the gas', heatingValue, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const wanted = table.counts === 'heatRate' ? load : load / heatingValue
  const offers = table.sizes.map((size) => ({ size, capacity: tableCapacity({ table, size, length }) }))
  const enough = offers.find(({ capacity }) => capacity.sized && capacity.value >= wanted * (1 - 1e-9))
  const [none] = offers.flatMap(({ capacity }) => (capacity.sized ? [] : [capacity]))
  if (enough?.capacity.sized !== true)
    return offers.every(({ capacity }) => !capacity.sized) && none !== undefined
      ? none
      : cannotSize(`No size of ${table.published} carries the load at this length.`)
  return sized({
    value: enough.size,
    working: [
      { name: 'wanted', value: wanted, ...countedIn(table) },
      ...enough.capacity.working,
      { name: 'size', value: enough.size, unit: '1' },
    ],
    assumed: enough.capacity.assumed,
    valid: true,
  })
}
