import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/** Water wanted at a fixture in a period. */
export interface FixtureDemand {
  readonly name: string
  /** m3 */
  readonly volume: number
  /** K at the fixture. */
  readonly temperature: number
}

interface Demand {
  readonly fixtures: readonly FixtureDemand[]
  /** K */
  readonly cold: number
  /** K at which the water is delivered: warmer than any fixture wants it. */
  readonly delivered: number
}

interface Balance {
  /** m3 at the delivered temperature. */
  readonly deliverable: number
  /** m3 at the delivered temperature. */
  readonly demand: number
}

/**
 * Demand of fixtures in a period as water at the temperature of delivery: what each mixes with cold by itself is taken out.
 *
 * @returns m3
 *
 * @example
 * const fixtures = [{ name: 'bath', volume: 0.1136, temperature: 313.71 }]
 * hotWaterDemand({ fixtures, cold: 280.37, delivered: 322.04 }) // value 0.0909, 30 gal at 105 F are 24 gal at 120 F
 */
export function hotWaterDemand({ fixtures, cold, delivered }: Demand): Sizing {
  const why = firstImpossible(
    ...fixtures.map(({ name, volume }) => [`water for ${name}`, volume, 'zero or more'] as const),
    ['cold water', cold, 'above zero'],
    ['rise from cold to delivered', delivered - cold, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const beyond = fixtures.find(({ temperature }) => !(temperature <= delivered && temperature >= cold))
  if (beyond !== undefined) {
    return cannotSize(`Water of ${cold} K to ${delivered} K cannot be ${beyond.temperature} K at ${beyond.name}.`)
  }
  const shares = fixtures.map(({ name, volume, temperature }) => ({
    name,
    value: (volume * (temperature - cold)) / (delivered - cold),
    unit: 'm3',
  }))
  const value = shares.reduce((sum, share) => sum + share.value, 0)
  return sized({
    value,
    working: [
      { name: 'rise from cold to delivered', value: delivered - cold, unit: 'K' },
      ...shares,
      { name: 'demand', value, unit: 'm3' },
    ],
    assumed: [],
    valid: true,
  })
}

/**
 * What is left of the supply when the demand is met; below zero it falls short.
 *
 * @returns m3 at the delivered temperature
 *
 * @example
 * hotWaterLeft({ deliverable: 0.6, demand: 0.249 }) // value 0.351
 */
export function hotWaterLeft({ deliverable, demand }: Balance): Sizing {
  const why = firstImpossible(['water delivered', deliverable, 'zero or more'], ['demand', demand, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  return sized({
    value: deliverable - demand,
    working: [
      { name: 'delivered', value: deliverable, unit: 'm3' },
      { name: 'demand', value: demand, unit: 'm3' },
      { name: 'left', value: deliverable - demand, unit: 'm3' },
    ],
    assumed: [],
    valid: true,
  })
}
