import type { GasTable } from '../../tables/index.js'
import type { Sizing } from '../sizing.js'
import { type GasRun, type GasSection, gasTree } from './gas-tree.js'
import { tableCapacity } from './table-capacity.js'
import { tableSize } from './table-size.js'

/** Which length every section is looked up at: the longest of the house, or for a branch that of its own farthest outlet. */
export type LengthMethod = 'longest-length' | 'branch-length'

interface PipedHouse {
  readonly sections: readonly GasSection[]
  readonly table: GasTable
  /** J/m3 */
  readonly heatingValue: number
  readonly method: LengthMethod
}

/** What a section must carry, and at which length. */
export interface SizedSection {
  readonly id: string
  /** W, of all appliances behind it. */
  readonly load: number
  /** m, at which the table is read. */
  readonly length: number
  /** Smallest size that carries it. */
  readonly size: Sizing
  /** What a size carries here, to judge what is fitted. */
  readonly carries: (size: number) => Sizing
}

/** Every section with its smallest pipe, or why there is none. */
export type SizedTree =
  { readonly ok: true; readonly sections: readonly SizedSection[] } | { readonly ok: false; readonly why: string }

/**
 * Sizes all gas pipe of a house by a published table.
 *
 * Longest-length method: every section at the length from the meter to the farthest outlet. Branch-length method: so the
 * sections on the way to the farthest outlet, and every other at the length to the farthest outlet behind it. 2018 IFGC
 * 402.4.1 and 402.4.2.
 *
 * @example
 * sizeGasTree({ sections, table: gasTable('steel-natural-gas-half-inch'), heatingValue: 38.19e6, method: 'longest-length' })
 */
export function sizeGasTree({ sections, table, heatingValue, method }: PipedHouse): SizedTree {
  const tree = gasTree(sections)
  if (!tree.ok) return tree
  const longest = Math.max(...tree.runs.map(({ farthest }) => farthest))
  const sizedSections = tree.runs.map(({ section, load, farthest }: GasRun) => {
    const length = method === 'longest-length' ? longest : farthest
    return {
      id: section.id,
      load,
      length,
      size: tableSize({ table, load, heatingValue, length }),
      carries: (size: number) => tableCapacity({ table, size, length }),
    }
  })
  return { ok: true, sections: sizedSections }
}
