import { si } from '../../units/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/**
 * Steam that the relief valves of a boiler must be able to let off: a pound an hour for each 1,000 Btu/h of output.
 *
 * 12 NYCRR 4-5.3, read; other states have the same rule. A valve marked in Btu/h is compared with the output itself.
 *
 * @param output W, the highest output; the input is the careful choice
 * @returns kg/s
 *
 * @example
 * reliefSteam(43961) // value 0.0189, or 150 lb/h for 150,000 Btu/h
 */
export function reliefSteam(output: number): Sizing {
  const why = firstImpossible(['output of the boiler', output, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const value = output / heatOfSteam
  return sized({
    value,
    working: [
      { name: 'output of the boiler', value: output, unit: 'W' },
      { name: 'heat that a mass of steam carries off', value: heatOfSteam, unit: 'J/kg' },
      { name: 'relief capacity', value, unit: 'kg/s' },
    ],
    assumed: [],
    valid: true,
  })
}

/** A thousand Btu a pound, the round figure of the rule; J/kg. */
const heatOfSteam = (si('heatRate', '1000 Btu/h') * 3600) / si('mass', '1 lb')

/** How a boiler is built: gas around tubes of water, or gas through tubes in water. */
export type TubeKind = 'fire-tube' | 'water-tube'

/**
 * Steam that the relief valves of a gas or oil boiler must be able to let off, by its heating surface, where the output is
 * not known.
 *
 * COMAR 09.12.01.11, read: 8 lb/h for a square foot of fire-tube, 10 lb/h of water-tube surface.
 *
 * @returns kg/s
 *
 * @example
 * reliefSteamBySurface({ area: 1.858, tubes: 'fire-tube' }) // value 0.02016, or 160 lb/h for 20 ft2
 */
export function reliefSteamBySurface({ area, tubes }: { readonly area: number; readonly tubes: TubeKind }): Sizing {
  const why = firstImpossible(['heating surface', area, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const each = poundsForSquareFoot[tubes] * (si('mass', '1 lb') / 3600 / si('area', '1 ft2'))
  return sized({
    value: each * area,
    working: [
      { name: 'heating surface', value: area, unit: 'm2' },
      { name: `steam of a ${tubes} boiler`, value: each, unit: 'kg/s m2' },
      { name: 'relief capacity', value: each * area, unit: 'kg/s' },
    ],
    assumed: ['fired by gas or oil'],
    valid: true,
  })
}

const poundsForSquareFoot: Readonly<Record<TubeKind, number>> = { 'fire-tube': 8, 'water-tube': 10 }
