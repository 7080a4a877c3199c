import { type TabulatedEmitter, tabulatedOutputs } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { interpolate } from '../interpolate.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface CastIron {
  readonly emitter: TabulatedEmitter
  /** m2 of EDR for a radiator, m for a baseboard. */
  readonly size: number
  /** K, mean of supply and return. */
  readonly water: number
}

/**
 * Output of cast iron as trade tables print it: the careful figure beside the power law. The radiator table runs straight and
 * is 17 % below the law at 120 F.
 *
 * @returns W
 *
 * @example
 * tabulatedOutput({ emitter: 'cast-iron-radiator', size: 0.0929, water: 322.04 }) // value 14.65, or 50 Btu/h for a square foot
 */
export function tabulatedOutput({ emitter, size, water }: CastIron): Sizing {
  const why = firstImpossible(['size of the emitter', size, 'zero or more'], ['water temperature', water, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const { value: each, within } = interpolate(
    tabulatedOutputs(emitter).map((row) => [row.water, row.output] as const),
    water,
  )
  const unit = emitter === 'cast-iron-radiator' ? 'm2' : 'm'
  return sized({
    value: each * size,
    working: [
      { name: 'output of one', value: each, unit: `W/${unit}` },
      { name: 'size', value: size, unit },
      { name: 'output by the table', value: each * size, unit: 'W' },
    ],
    assumed: [emitter === 'cast-iron-radiator' ? 'a room at 70 F' : 'air at 65 F'],
    valid: within,
  })
}
