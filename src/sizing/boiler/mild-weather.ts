import { firstImpossible } from '../first-impossible.js'
import { loadAt, type LoadLine } from '../load/load-share.js'
import type { WeatherBin } from '../load/weather-bins.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface LowFire {
  readonly line: LoadLine
  /** W on the design day, of the zones that are open together; of the smallest zone where it can be open alone. */
  readonly designLoad: number
  /** W, lowest output of the boiler. */
  readonly lowestOutput: number
}

/**
 * Outdoor temperature above which the burner must cycle: where the load falls below the lowest fire.
 *
 * @returns K; not valid where even the design day asks for less
 *
 * @example
 * // 7,100 of 42,850 Btu/h, 5 F to 70 F: above 59.2 F
 * cyclesAbove({ line: { designOutdoor: 258.15, balance: 294.26 }, designLoad: 12558, lowestOutput: 2081 }) // value 288.28
 */
export function cyclesAbove({ line, designLoad, lowestOutput }: LowFire): Sizing {
  const why = firstImpossible(
    ['design load', designLoad, 'above zero'],
    ['lowest output', lowestOutput, 'zero or more'],
    ['outdoor design temperature', line.designOutdoor, 'above zero'],
    ['balance temperature above the design day', line.balance - line.designOutdoor, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const share = lowestOutput / designLoad
  const value = line.balance - Math.min(1, share) * (line.balance - line.designOutdoor)
  return sized({
    value,
    working: [
      { name: 'lowest output over the design load', value: share, unit: '1' },
      { name: 'the burner cycles above', value, unit: 'K' },
    ],
    assumed: ['the load is straight in the outdoor temperature'],
    valid: share <= 1,
  })
}

interface Fires extends LowFire {
  readonly bins: readonly WeatherBin[]
  /** W, highest output of the boiler. */
  readonly highestOutput: number
}

/** Hours of a year by what the burner does. */
export interface BurnerHours {
  /** h of loads below the lowest fire. */
  readonly cycling: number
  /** h of loads that the burner follows. */
  readonly following: number
  /** h of loads above the highest fire. */
  readonly short: number
}

/** The hours, or why they cannot be told. */
export type BurnerYear =
  { readonly told: true; readonly hours: BurnerHours } | { readonly told: false; readonly why: string }

/**
 * What the burner does over the weather of a year: the band between its lowest and highest fire laid over the loads.
 *
 * @example
 * burnerYear({ bins, line, designLoad: 12558, lowestOutput: 2081, highestOutput: 20515 })
 */
export function burnerYear({ bins, line, designLoad, lowestOutput, highestOutput }: Fires): BurnerYear {
  const why = firstImpossible(
    ['lowest output', lowestOutput, 'zero or more'],
    ['highest output above the lowest', highestOutput - lowestOutput, 'zero or more'],
    ...bins.map(({ hours }) => ['hours of a bin', hours, 'zero or more'] as const),
  )
  if (why !== undefined) return { told: false, why }
  const loads = bins.map(({ outdoor, hours }) => ({ hours, load: loadAt({ line, designLoad, outdoor }) }))
  for (const { load } of loads) if (!load.sized) return { told: false, why: load.why }
  const hoursWhere = (holds: (load: number) => boolean): number =>
    loads.reduce((sum, { load, hours }) => (load.sized && load.value > 0 && holds(load.value) ? sum + hours : sum), 0)
  return {
    told: true,
    hours: {
      cycling: hoursWhere((load) => load < lowestOutput),
      following: hoursWhere((load) => load >= lowestOutput && load <= highestOutput),
      short: hoursWhere((load) => load > highestOutput),
    },
  }
}
