import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/** A layer, or the film of air on a surface. */
export interface Layer {
  readonly name: string
  /** m2 K/W */
  readonly resistance: number
}

/**
 * Conductance of a wall from the resistances of its layers.
 *
 * @returns W/m2 K
 *
 * @example
 * conductanceOfLayers([{ name: 'all, R 13', resistance: 2.2894 }]) // value 0.4368
 */
export function conductanceOfLayers(layers: readonly Layer[]): Sizing {
  const why = firstImpossible(
    ...layers.map(({ name, resistance }) => [`resistance of ${name}`, resistance, 'zero or more'] as const),
  )
  if (why !== undefined) return cannotSize(why)
  const total = layers.reduce((sum, { resistance }) => sum + resistance, 0)
  if (total === 0) return cannotSize('Layers without resistance have no conductance that can be told.')
  const value = 1 / total
  return sized({
    value,
    working: [
      ...layers.map(({ name, resistance }) => ({ name, value: resistance, unit: 'm2 K/W' })),
      { name: 'resistance', value: total, unit: 'm2 K/W' },
      { name: 'conductance', value, unit: 'W/m2 K' },
    ],
    assumed: [],
    valid: true,
  })
}
