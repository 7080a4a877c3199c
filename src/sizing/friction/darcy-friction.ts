import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { factorBy, type FrictionMethod, methodInWords } from './friction-method.js'

interface Regime {
  readonly reynolds: number
  /** Roughness over inside diameter. */
  readonly relativeRoughness: number
  /** Colebrook where nothing is said. */
  readonly method?: FrictionMethod
}

/**
 * Darcy friction factor of a round pipe, four times Fanning's.
 *
 * @returns 1
 *
 * @example
 * darcyFriction({ reynolds: 100_000, relativeRoughness: 0.0001 }) // value 0.018514
 */
export function darcyFriction({ reynolds, relativeRoughness, method = 'colebrook' }: Regime): Sizing {
  const why = firstImpossible(
    ['Reynolds number', reynolds, 'above zero'],
    ['roughness over diameter', relativeRoughness, 'zero or more'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = factorBy(method, reynolds, relativeRoughness)
  return sized({
    value,
    working: [
      { name: 'Reynolds number', value: reynolds, unit: '1' },
      { name: 'roughness over diameter', value: relativeRoughness, unit: '1' },
      { name: 'friction factor', value, unit: '1' },
    ],
    assumed: [methodInWords(method, reynolds)],
    valid: relativeRoughness <= 0.05 && reynolds <= 1e8,
  })
}
