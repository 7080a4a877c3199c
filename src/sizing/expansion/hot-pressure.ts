import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { coldAir } from './tank-acceptance.js'

interface WarmTank {
  /** m3, the whole tank. */
  readonly volume: number
  /** Pa, gauge, of the air charge without water on it; zero for a plain steel tank. */
  readonly precharge: number
  /** Pa, gauge, when cold. */
  readonly fill: number
  /** Pa, absolute. */
  readonly atmosphere: number
  /** m3, by which the fluid has swollen. */
  readonly expansion: number
}

/**
 * What the gauge reads when the fluid has swollen into the tank.
 *
 * @returns Pa, gauge, at the tank
 *
 * @example
 * // 10.3 gal filled to 16 psi that took up 2.24 gal: value 169000, or 24.5 psi
 * hotPressure({ volume: 0.03899, precharge: 110316, fill: 110316, atmosphere: 101353, expansion: 0.008462 })
 */
export function hotPressure({ expansion, ...tank }: WarmTank): Sizing {
  const why = firstImpossible(
    ['swelling of the fluid', expansion, 'zero or more'],
    ['volume of the tank', tank.volume, 'above zero'],
    ['air charge', tank.precharge, 'zero or more'],
    ['fill pressure', tank.fill, 'zero or more'],
    ['pressure of the air', tank.atmosphere, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const cold = coldAir(tank)
  const hot = cold - expansion
  if (hot <= 0) return cannotSize('The fluid swells by more than the air in the tank: the pressure has no end.')
  const start = Math.max(tank.fill, tank.precharge) + tank.atmosphere
  const value = expansion === 0 ? tank.fill : (start * cold) / hot - tank.atmosphere
  return sized({
    value,
    working: [
      { name: 'air in the tank when cold', value: cold, unit: 'm3' },
      { name: 'air in the tank when hot', value: hot, unit: 'm3' },
      { name: 'hot pressure', value, unit: 'Pa' },
    ],
    assumed: ['air at one temperature', 'a rigid system'],
    valid: true,
  })
}
