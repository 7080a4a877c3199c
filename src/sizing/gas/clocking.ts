import { type Expected, firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface DialTurn {
  /** m3 that went by on the dial. */
  readonly volume: number
  /** J/m3, as the meter counts; see {@link localHeatingValue}. */
  readonly heatingValue: number
}

/**
 * Heat input from the time in which gas goes by on the meter, with nothing else burning.
 *
 * @returns W
 *
 * @example
 * clockedInput({ volume: 0.05663, time: 72, heatingValue: 38.19e6 }) // value 30040, or 102,500 Btu/h
 */
export function clockedInput({ volume, time, heatingValue }: DialTurn & { readonly time: number }): Sizing {
  const why = firstImpossible(...dial({ volume, heatingValue }), ['time on the watch', time, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const value = (volume / time) * heatingValue
  return sized({
    value,
    working: [
      { name: 'gas flow', value: volume / time, unit: 'm3/s', readAs: 'gas-flow' },
      { name: 'heating value', value: heatingValue, unit: 'J/m3' },
      { name: 'heat input', value, unit: 'W' },
    ],
    assumed: [alone],
    valid: true,
  })
}

/**
 * How long gas for an input takes to go by on the meter, to know before watching it.
 *
 * @returns s
 *
 * @example
 * clockingTime({ volume: 0.05663, input: 21980, heatingValue: 38.19e6 }) // value 98.4, for 75,000 Btu/h
 */
export function clockingTime({ volume, input, heatingValue }: DialTurn & { readonly input: number }): Sizing {
  const why = firstImpossible(...dial({ volume, heatingValue }), ['heat input', input, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const value = (volume * heatingValue) / input
  return sized({
    value,
    working: [
      { name: 'heat in the gas on the dial', value: volume * heatingValue, unit: 'J' },
      { name: 'heat input', value: input, unit: 'W' },
      { name: 'time on the watch', value, unit: 's' },
    ],
    assumed: [alone],
    valid: true,
  })
}

const alone = 'nothing else burning on the meter'

function dial({ volume, heatingValue }: DialTurn): readonly Expected[] {
  return [
    ['gas on the dial', volume, 'above zero'],
    ['heating value of the gas', heatingValue, 'above zero'],
  ]
}
