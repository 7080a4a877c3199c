import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface WantedRun {
  /** W, lowest output of the boiler. */
  readonly lowestOutput: number
  /** W, smallest load that is served alone. */
  readonly load: number
  /** s for which the burner should run at a stretch; 600 is common practice. */
  readonly onTime: number
  /** J/m3 K, of the water or mixture. */
  readonly heatCapacity: number
  /** K between burner off and burner on. */
  readonly swing: number
}

/**
 * Water that must take part so that the burner runs long enough.
 *
 * @returns m3; 0 where the load takes the lowest fire
 *
 * @example
 * // 18,000 Btu/h on 900, ten minutes, 10 F: 34 gal
 * waterForRun({ lowestOutput: 5275, load: 264, onTime: 600, heatCapacity: 4.15e6, swing: 5.556 }) // value 0.1304
 */
export function waterForRun({ lowestOutput, load, onTime, heatCapacity, swing }: WantedRun): Sizing {
  const why = firstImpossible(
    ['lowest output', lowestOutput, 'zero or more'],
    ['load', load, 'zero or more'],
    ['time on', onTime, 'zero or more'],
    ['heat capacity of the water', heatCapacity, 'above zero'],
    ['swing', swing, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const heat = Math.max(0, lowestOutput - load) * onTime
  const value = heat / (heatCapacity * swing)
  return sized({
    value,
    working: [
      { name: 'lowest fire above the load', value: lowestOutput - load, unit: 'W' },
      { name: 'surplus of a run', value: heat, unit: 'J' },
      { name: 'water that must take part', value, unit: 'm3' },
    ],
    assumed: ['the water counts as well mixed', 'metal left out'],
    valid: true,
  })
}

interface OpenWater extends WantedRun {
  /** m3 of water that is open to the boiler already. */
  readonly present: number
}

/**
 * Buffer to add to the water that takes part already.
 *
 * @returns m3; 0 where there is enough
 *
 * @example
 * buffer({ lowestOutput: 5275, load: 264, onTime: 600, heatCapacity: 4.15e6, swing: 5.556, present: 0.0379 }) // value 0.0925
 */
export function buffer({ present, ...run }: OpenWater): Sizing {
  const why = firstImpossible(['water that takes part already', present, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const wanted = waterForRun(run)
  if (!wanted.sized) return wanted
  const value = Math.max(0, wanted.value - present)
  return sized({
    ...wanted,
    value,
    working: [
      ...wanted.working,
      { name: 'takes part already', value: present, unit: 'm3' },
      { name: 'buffer', value, unit: 'm3' },
    ],
  })
}
