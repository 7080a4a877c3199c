import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface CopperWire {
  /** AWG number: 18 is common for controls. */
  readonly gauge: number
  /** K */
  readonly temperature: number
  /** Stranded wire is twisted, so its strands are longer than the wire. */
  readonly stranded: boolean
}

/**
 * Resistance of a copper wire for one meter of one conductor, from its gauge. The electrical code's own table, which holds
 * for 75 C, is within half a percent.
 *
 * @returns ohm/m
 *
 * @example
 * wireResistance({ gauge: 18, temperature: 348.15, stranded: true }) // value 0.0260
 */
export function wireResistance({ gauge, temperature, stranded }: CopperWire): Sizing {
  const why = firstImpossible(
    ['gauge of the wire', gauge, 'any'],
    ['temperature of the wire', temperature, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const diameter = smallest * ratio ** ((36 - gauge) / 39)
  const warmth = 1 + perKelvin * (temperature - roomTemperature)
  if (warmth <= 0) return cannotSize(`At ${temperature} K the straight line for copper has ended.`)
  const value = ((4 * resistivity * warmth) / (Math.PI * diameter ** 2)) * (stranded ? twist : 1)
  return sized({
    value,
    working: [
      { name: 'diameter of the copper', value: diameter, unit: 'm' },
      { name: 'resistivity when warm', value: resistivity * warmth, unit: 'ohm m' },
      { name: 'resistance', value, unit: 'ohm/m' },
    ],
    assumed: ['annealed copper', ...(stranded ? ['strands 2 % longer than the wire'] : [])],
    valid: gauge >= 0 && gauge <= 40 && temperature >= 223.15 && temperature <= 423.15,
  })
}

/** American wire gauge: 36 has 0.005 in., and 39 steps make it 92 times thicker. */
const smallest = 0.000127
const ratio = 92
/** International standard of annealed copper at 20 C, ohm m, and its rise for a kelvin. */
const resistivity = 1.7241e-8
const perKelvin = 0.00393
const roomTemperature = 293.15
const twist = 1.02
