import { firstImpossible } from '../first-impossible.js'
import { altitudeShare } from '../gas/altitude-derating.js'
import { interpolate } from '../interpolate.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/** A line of a maker's altitude table. */
export interface AltitudeLine {
  /** m */
  readonly altitude: number
  /** Part of the output that is left, 0 to 1. */
  readonly share: number
}

interface HighBoiler {
  /** W by the sea. */
  readonly output: number
  /** m */
  readonly altitude: number
  /** The maker's table; empty where the maker says nothing. */
  readonly makerTable: readonly AltitudeLine[]
  /** From where the default of 4 % for each 1,000 ft is counted. */
  readonly countedFrom: 'sea' | 'two-thousand-feet'
}

/**
 * Output of a boiler at an altitude: by the maker's table, and by the default only where there is none.
 *
 * @returns W
 *
 * @example
 * // 199,000 Btu/h at 5,400 ft: 171,936
 * outputAtAltitude({ output: 58321, altitude: 1645.92, makerTable: [], countedFrom: 'two-thousand-feet' }) // value 50389
 */
export function outputAtAltitude({ output, altitude, makerTable, countedFrom }: HighBoiler): Sizing {
  const why = firstImpossible(
    ['output of the boiler', output, 'zero or more'],
    ['altitude', altitude, 'any'],
    ...makerTable.flatMap((line) => [
      ['altitude in the table of the maker', line.altitude, 'any'] as const,
      ['share in the table of the maker', line.share, 'a share'] as const,
    ]),
  )
  if (why !== undefined) return cannotSize(why)
  const share = makerTable.length === 0 ? altitudeShare({ altitude, countedFrom }) : makerShare(makerTable, altitude)
  if (!share.sized) return share
  const value = output * share.value
  return sized({
    ...share,
    value,
    working: [
      { name: 'output by the sea', value: output, unit: 'W' },
      ...share.working,
      { name: 'output at the altitude', value, unit: 'W' },
    ],
  })
}

/** Below the first line of a table nothing is taken off beyond it; above the last the table has ended. */
function makerShare(table: readonly AltitudeLine[], altitude: number): Sizing {
  const points = table.map((line) => [line.altitude, line.share] as const).toSorted(([one], [other]) => one - other)
  const { value } = interpolate(points, altitude)
  return sized({
    value,
    working: [
      { name: 'altitude', value: altitude, unit: 'm', readAs: 'distance' },
      { name: 'share by the maker', value, unit: '1' },
    ],
    assumed: ['straight lines between the lines of the maker'],
    valid: altitude <= (points.at(-1)?.[0] ?? -Infinity),
  })
}
