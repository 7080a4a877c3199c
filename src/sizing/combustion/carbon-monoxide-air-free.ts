import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { oxygenInAir } from './oxygen-in-air.js'

interface MonoxideReading {
  /** Share of carbon monoxide in the dry sample, 42e-6 for 42 ppm. */
  readonly carbonMonoxide: number
  /** Share of oxygen in the dry sample, from 0 to below 0.209. */
  readonly oxygen: number
}

/**
 * Carbon monoxide as it would be without the air that dilutes the sample.
 *
 * @returns share of the air-free flue gas
 *
 * @example
 * carbonMonoxideAirFree({ carbonMonoxide: 42e-6, oxygen: 0.048 }) // value 54.5e-6
 */
export function carbonMonoxideAirFree({ carbonMonoxide, oxygen }: MonoxideReading): Sizing {
  const why = firstImpossible(
    ['share of carbon monoxide', carbonMonoxide, 'a share'],
    ['share of oxygen', oxygen, 'zero or more'],
  )
  if (why !== undefined) return cannotSize(why)
  if (oxygen >= oxygenInAir) return cannotSize(`A sample with ${oxygen * 100} % of oxygen is plain air, not flue gas.`)
  const value = airFree(carbonMonoxide, oxygen)
  return sized({
    value,
    working: [
      { name: 'carbon monoxide in the sample', value: carbonMonoxide, unit: '1' },
      { name: 'oxygen in the sample', value: oxygen, unit: '1' },
      { name: 'carbon monoxide, air free', value, unit: '1' },
    ],
    assumed: ['20.9 % of oxygen in air'],
    valid: true,
  })
}

/**
 * A share of dry flue gas as it would be without the air that dilutes it; where bounds are turned, which may be unlimited.
 *
 * @param share any share of the dry sample, such as 42e-6
 * @param oxygen share of oxygen in the sample, below 0.209
 * @example
 * airFree(42e-6, 0.048) // 54.5e-6
 */
export function airFree(share: number, oxygen: number): number {
  return (share * oxygenInAir) / (oxygenInAir - oxygen)
}
