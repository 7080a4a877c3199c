import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/**
 * Most power of a class 2 source whose own build limits it, at the voltage of heating controls.
 *
 * NEC chapter 9, Table 11: up to 20 V five amperes times the voltage, from there to 30 V 100 VA; the latter read, the former
 * recalled.
 *
 * @param voltage V
 * @returns VA
 *
 * @example
 * classTwoLimit(24) // value 100
 */
export function classTwoLimit(voltage: number): Sizing {
  const why = firstImpossible(['voltage', voltage, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  if (voltage > 30) return cannotSize(`A class 2 source for controls has at most 30 V, not ${voltage} V.`)
  const value = voltage <= 20 ? 5 * voltage : 100
  return sized({
    value,
    working: [
      { name: 'voltage', value: voltage, unit: 'V' },
      { name: 'limit of class 2', value, unit: 'VA' },
    ],
    assumed: ['alternating current, in a dry place'],
    valid: true,
  })
}
