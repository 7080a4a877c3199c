import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface Circuit {
  /** ohm/m of one conductor. */
  readonly resistance: number
  /** A */
  readonly current: number
}

/**
 * Voltage that is lost along a pair of wires, there and back.
 *
 * @returns V
 *
 * @example
 * wireDrop({ resistance: 0.02608, current: 1.6667, length: 30.48 }) // value 2.65
 */
export function wireDrop({ resistance, current, length }: Circuit & { readonly length: number }): Sizing {
  const why =
    impossibleCircuit({ resistance, current }) ?? firstImpossible(['length of the wires', length, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const value = 2 * length * resistance * current
  return sized({
    value,
    working: [
      { name: 'length there and back', value: 2 * length, unit: 'm' },
      { name: 'resistance', value: 2 * length * resistance, unit: 'ohm' },
      { name: 'current', value: current, unit: 'A' },
      { name: 'voltage lost', value, unit: 'V' },
    ],
    assumed: ['a current that does not change with the voltage'],
    valid: true,
  })
}

/**
 * Farthest that a pair of wires may lead before it loses more than allowed.
 *
 * @returns m, one way
 *
 * @example
 * longestWire({ resistance: 0.02608, current: 0.32, drop: 2.4 }) // value 143.8
 */
export function longestWire({ resistance, current, drop }: Circuit & { readonly drop: number }): Sizing {
  const why =
    impossibleCircuit({ resistance, current }) ??
    firstImpossible(['voltage that may be lost', drop, 'zero or more'], ['current', current, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const value = drop / (2 * resistance * current)
  return sized({
    value,
    working: [
      { name: 'voltage that may be lost', value: drop, unit: 'V' },
      { name: 'lost for a meter, there and back', value: 2 * resistance * current, unit: 'V/m' },
      { name: 'longest wire', value, unit: 'm' },
    ],
    assumed: ['a current that does not change with the voltage'],
    valid: true,
  })
}

function impossibleCircuit({ resistance, current }: Circuit): string | undefined {
  return firstImpossible(['resistance of the wire', resistance, 'above zero'], ['current', current, 'zero or more'])
}
