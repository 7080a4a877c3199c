import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface Installed {
  /** W, of the boilers or of the emitters. */
  readonly output: number
  /** W */
  readonly load: number
}

/**
 * Output that is installed over the load: of a boiler on its plate, old or new, or of the emitters at a water temperature.
 *
 * @example
 * outputOverLoad({ output: 20515, load: 12558 }) // value 1.634, for 70,000 and 42,850 Btu/h
 */
export function outputOverLoad({ output, load }: Installed): Sizing {
  const why = firstImpossible(['output', output, 'zero or more'], ['load', load, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const value = output / load
  return sized({
    value,
    working: [
      { name: 'output', value: output, unit: 'W' },
      { name: 'load', value: load, unit: 'W' },
      { name: 'output over load', value, unit: '1' },
    ],
    assumed: [],
    valid: true,
  })
}

/**
 * Output at which a ratio to the load is reached: the largest boiler that stays within it.
 *
 * @returns W
 *
 * @example
 * outputAtRatio({ load: 11723, ratio: 1.4 }) // value 16412, or 56,000 Btu/h
 */
export function outputAtRatio({ load, ratio }: { readonly load: number; readonly ratio: number }): Sizing {
  const why = firstImpossible(['load', load, 'zero or more'], ['ratio', ratio, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  return sized({
    value: load * ratio,
    working: [
      { name: 'load', value: load, unit: 'W' },
      { name: 'ratio', value: ratio, unit: '1' },
      { name: 'output', value: load * ratio, unit: 'W' },
    ],
    assumed: [],
    valid: true,
  })
}
