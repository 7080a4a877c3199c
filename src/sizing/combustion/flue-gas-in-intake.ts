import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { oxygenInAir } from './oxygen-in-air.js'

interface IntakeReading {
  /** Share of oxygen measured in the air intake. */
  readonly intakeOxygen: number
  /** Share of oxygen measured in the dry flue gas at the same time. */
  readonly flueOxygen: number
}

/**
 * Part of the intake air that is flue gas come back.
 *
 * Air with 20.9 % of oxygen is mixed with flue gas; the reading in the intake tells how much of each.
 *
 * @returns 0 for clean air, 1 for flue gas alone
 *
 * @example
 * flueGasInIntake({ intakeOxygen: 0.203, flueOxygen: 0.048 }) // value 0.037
 */
export function flueGasInIntake({ intakeOxygen, flueOxygen }: IntakeReading): Sizing {
  const why = firstImpossible(
    ['share of oxygen in the intake', intakeOxygen, 'a share'],
    ['share of oxygen in the flue', flueOxygen, 'a share'],
    ['oxygen that the flame has used', oxygenInAir - flueOxygen, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  if (intakeOxygen > oxygenInAir)
    return cannotSize(`The intake cannot hold ${intakeOxygen * 100} % of oxygen: air has 20.9 %.`)
  const value = (oxygenInAir - intakeOxygen) / (oxygenInAir - flueOxygen)
  return sized({
    value,
    working: [
      { name: 'oxygen missing in the intake', value: oxygenInAir - intakeOxygen, unit: '1' },
      { name: 'oxygen missing in the flue', value: oxygenInAir - flueOxygen, unit: '1' },
      { name: 'part of the intake air that is flue gas', value, unit: '1' },
    ],
    assumed: ['20.9 % of oxygen in air'],
    valid: value <= 1,
  })
}
