import type { Sized } from './sized.js'

/** Fittings of one kind on a side of a vent. */
export interface VentFittings {
  readonly name: string
  readonly count: number
  /** m, length that the maker counts for one. */
  readonly each: number
}

/** One side of a vent: exhaust or intake. */
export interface VentPipe {
  /** m */
  readonly straight: number
  readonly fittings: readonly VentFittings[]
}

/**
 * Length of a vent run as its maker counts it: the straight pipe, and for every fitting the length from the maker's table.
 *
 * @returns m
 *
 * @example
 * equivalentVentLength({ straight: 11.58, fittings: [{ name: 'elbow90', count: 7, each: 1.524 }] }).value // 22.25
 */
export function equivalentVentLength({ straight, fittings }: VentPipe): Sized {
  const terms = fittings.map(({ name, count, each }) => ({
    name: `${count} ${name}`,
    // An unlimited number of fittings that count nothing, or none of unlimited length, is nothing.
    value: count === 0 || each === 0 ? 0 : count * each,
    unit: 'm',
  }))
  const value = terms.reduce((sum, term) => sum + term.value, straight)
  return {
    value,
    working: [
      { name: 'straight pipe', value: straight, unit: 'm' },
      ...terms,
      { name: 'equivalent length', value, unit: 'm' },
    ],
    assumed: [],
    valid: straight >= 0 && fittings.every(({ count, each }) => count >= 0 && each >= 0),
  }
}
