import { equivalentVentLength, type VentPipe } from '../equivalent-vent-length.js'
import { type Expected, firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface VentLimit {
  /** m, longest equivalent length by the maker's table for the diameter; infinite where the maker sets none. */
  readonly most: number
  /** Part of it that the maker allows at this altitude; 1 where the manual names none. */
  readonly altitudeFactor: number
}

interface VentSide extends VentLimit {
  readonly pipe: VentPipe
}

interface BothSides extends VentLimit {
  readonly exhaust: VentPipe
  readonly intake: VentPipe
}

/**
 * Length that is left on one side of a vent; below zero it is too long.
 *
 * @returns m
 *
 * @example
 * const pipe = { straight: 11.58, fittings: [{ name: 'elbow90', count: 7, each: 1.524 }] }
 * ventLengthLeft({ pipe, most: 21.34, altitudeFactor: 1 }) // value -0.91
 */
export function ventLengthLeft({ pipe, ...limit }: VentSide): Sizing {
  return lengthLeft([['vent', pipe]], limit)
}

/**
 * Length that is left where the maker limits exhaust and intake together.
 *
 * @returns m; below zero they are too long
 *
 * @example
 * const side = { straight: 10, fittings: [] }
 * combinedVentLengthLeft({ exhaust: side, intake: side, most: 30, altitudeFactor: 1 }) // value 10
 */
export function combinedVentLengthLeft({ exhaust, intake, ...limit }: BothSides): Sizing {
  const sides = [
    ['exhaust', exhaust],
    ['intake', intake],
  ] as const
  return lengthLeft(sides, limit)
}

type Side = readonly [name: string, pipe: VentPipe]

function lengthLeft(sides: readonly Side[], { most, altitudeFactor }: VentLimit): Sizing {
  const why = firstImpossible(
    ...sides.flatMap(expectedOf),
    ['longest equivalent length', Math.min(most, Number.MAX_VALUE), 'above zero'],
    ['altitude factor', altitudeFactor, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const lengths = sides.map(([name, pipe]) => ({ name, ...equivalentVentLength(pipe) }))
  const allowed = most * altitudeFactor
  const value = lengths.reduce((left, length) => left - length.value, allowed)
  return sized({
    value,
    working: [
      ...lengths.flatMap(({ name, working }) => working.map((step) => ({ ...step, name: `${name}: ${step.name}` }))),
      { name: 'longest equivalent length of the maker', value: most, unit: 'm' },
      { name: 'altitude factor', value: altitudeFactor, unit: '1' },
      { name: 'allowed here', value: allowed, unit: 'm' },
      { name: 'left', value, unit: 'm' },
    ],
    assumed: [],
    valid: altitudeFactor <= 1,
  })
}

function expectedOf([side, { straight, fittings }]: Side): readonly Expected[] {
  return [
    [`straight pipe of the ${side}`, straight, 'zero or more'],
    ...fittings.flatMap(({ name, count, each }): readonly Expected[] => [
      [`count of ${name}`, count, 'zero or more'],
      [`length of one ${name}`, each, 'zero or more'],
    ]),
  ]
}
