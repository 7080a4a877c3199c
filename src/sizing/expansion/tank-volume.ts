import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { impossiblePressures, type TankPressures } from './tank-pressures.js'

interface NeededTank extends TankPressures {
  /** m3, by which the fluid of the system swells. */
  readonly expansion: number
}

/**
 * Diaphragm tank that takes up the swelling of a system; its air charge is the fill pressure.
 *
 * Boyle's law with absolute pressures (ASHRAE handbook, form recalled).
 *
 * @returns m3, of the whole tank
 *
 * @example
 * diaphragmTank({ expansion: 0.008462, fill: 110316, highest: 186158, atmosphere: 101353 }) // value 0.0321, or 8.47 gal
 */
export function diaphragmTank({ expansion, ...pressures }: NeededTank): Sizing {
  const why = whyNoTank(expansion, pressures)
  if (why !== undefined) return cannotSize(why)
  const [cold, hot] = [pressures.fill + pressures.atmosphere, pressures.highest + pressures.atmosphere]
  return tank(expansion, 1 - cold / hot, ['an air charge equal to the fill pressure', boyle])
}

/**
 * Plain steel tank that takes up the swelling of a system: it starts full of air at the pressure around and is filled
 * together with the system, so it must be larger than a diaphragm tank.
 *
 * @returns m3, of the whole tank
 *
 * @example
 * airCushionTank({ expansion: 0.008462, fill: 110316, highest: 186158, atmosphere: 101353 }) // value 0.067, or 17.7 gal
 */
export function airCushionTank({ expansion, ...pressures }: NeededTank): Sizing {
  const why = whyNoTank(expansion, pressures)
  if (why !== undefined) return cannotSize(why)
  const { fill, highest, atmosphere } = pressures
  const part = atmosphere / (fill + atmosphere) - atmosphere / (highest + atmosphere)
  return tank(expansion, part, ['a tank full of air before the system was filled', boyle])
}

const boyle = 'air at one temperature'

function whyNoTank(expansion: number, pressures: TankPressures): string | undefined {
  return firstImpossible(['swelling of the fluid', expansion, 'zero or more']) ?? impossiblePressures(pressures)
}

function tank(expansion: number, part: number, assumed: readonly string[]): Sizing {
  const value = expansion / part
  return sized({
    value,
    working: [
      { name: 'swelling of the fluid', value: expansion, unit: 'm3' },
      { name: 'part of the tank that takes it up', value: part, unit: '1' },
      { name: 'tank', value, unit: 'm3' },
    ],
    assumed,
    valid: true,
  })
}
