import { si } from '../../units/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { flowExpected } from './flow-in-pipe.js'

interface ValveFlow {
  /** Flow coefficient: m3/h of water at 1 bar. {@link kvFromCv} reads American ratings. */
  readonly kv: number
  /** m3/s */
  readonly flow: number
  /** kg/m3 */
  readonly density: number
}

/**
 * Pressure that a valve takes by its flow coefficient. In head of the fluid, the density falls out.
 *
 * @returns Pa
 *
 * @example
 * valveLoss({ kv: 6.487, flow: 0.0000839, density: 983.2 }) // value 213, 1.33 gpm through Cv 7.5
 */
export function valveLoss({ kv, flow, density }: ValveFlow): Sizing {
  const why = firstImpossible(['flow coefficient of the valve', kv, 'above zero'], flowExpected(flow), [
    'density',
    density,
    'above zero',
  ])
  if (why !== undefined) return cannotSize(why)
  const value = lossThroughValve(flow, kv, density)
  return sized({
    value,
    working: [
      { name: 'flow in an hour', value: flow * 3600, unit: 'm3/h' },
      { name: 'flow coefficient Kv', value: kv, unit: 'm3/h at 1 bar' },
      { name: 'density over that of the rating', value: density / ratingDensity, unit: '1' },
      { name: 'pressure loss', value, unit: 'Pa' },
    ],
    assumed: ['rated with water of 1000 kg/m3', 'turbulent flow in the valve'],
    valid: true,
  })
}

interface WantedDrop {
  /** m3/s */
  readonly flow: number
  /** Pa */
  readonly drop: number
  /** kg/m3 */
  readonly density: number
}

/**
 * Flow coefficient Kv at which a valve takes a pressure: what to look for in a catalog.
 *
 * @returns m3/h at 1 bar
 *
 * @example
 * kvForDrop({ flow: 0.01577, drop: 67_570, density: 999 }) // value 69, or Cv 79.8
 */
export function kvForDrop({ flow, drop, density }: WantedDrop): Sizing {
  const why = firstImpossible(
    flowExpected(flow),
    ['pressure drop over the valve', drop, 'above zero'],
    ['density', density, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const value = flow * 3600 * Math.sqrt((ratingPressure * density) / (drop * ratingDensity))
  return sized({
    value,
    working: [
      { name: 'flow in an hour', value: flow * 3600, unit: 'm3/h' },
      { name: 'pressure drop', value: drop, unit: 'Pa' },
      { name: 'flow coefficient Kv', value, unit: 'm3/h at 1 bar' },
    ],
    assumed: ['rated with water of 1000 kg/m3', 'turbulent flow in the valve'],
    valid: true,
  })
}

/** Pa, in bare numbers. */
export function lossThroughValve(flow: number, kv: number, density: number): number {
  return ratingPressure * ((flow * 3600) / kv) ** 2 * (density / ratingDensity)
}

/** kg/m3 */
const ratingDensity = 1000
const ratingPressure = si('pressure', '1 bar')
