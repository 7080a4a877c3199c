import type { Fuel } from '../../tables/index.js'
import { condensingEfficiency } from '../combustion/condensing-efficiency.js'
import { type ResetDesign, resetReturn } from '../emitters/outdoor-reset.js'
import { firstImpossible } from '../first-impossible.js'
import { interpolate } from '../interpolate.js'
import { loadShare } from '../load/load-share.js'
import type { WeatherBin } from '../load/weather-bins.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/** A point of a boiler's efficiency curve. */
export interface EfficiencyPoint {
  /** K */
  readonly return: number
  /** On the gross heating value, 0 to 1. */
  readonly efficiency: number
}

/**
 * Efficiency of a boiler at a return temperature by the curve of its maker; level, and not valid, beyond its ends.
 *
 * @param temperature K, of the return
 *
 * @example
 * makerEfficiency([{ return: 303.15, efficiency: 0.96 }, { return: 333.15, efficiency: 0.87 }], 318.15) // value 0.915
 */
export function makerEfficiency(curve: readonly EfficiencyPoint[], temperature: number): Sizing {
  const why = firstImpossible(
    ['return temperature', temperature, 'above zero'],
    ...curve.flatMap((point) => [
      ['return temperature of a point', point.return, 'above zero'] as const,
      ['efficiency of a point', point.efficiency, 'a share'] as const,
    ]),
  )
  if (why !== undefined) return cannotSize(why)
  if (curve.length === 0) return cannotSize('A curve without points tells no efficiency.')
  const points = curve.map((point) => [point.return, point.efficiency] as const)
  const { value, within } = interpolate(
    points.toSorted(([one], [other]) => one - other),
    temperature,
  )
  return sized({
    value,
    working: [
      { name: 'return temperature', value: temperature, unit: 'K' },
      { name: 'efficiency on the gross heating value', value, unit: '1' },
    ],
    assumed: ['straight lines between the points of the maker'],
    valid: within,
  })
}

interface BurningBoiler {
  readonly fuel: Fuel
  /** Share of air beyond what the gas needs, 0.25 for 25 %. */
  readonly excessAir: number
  /** Pa, absolute: the pressure of the air outside. */
  readonly pressure: number
  /** K by which the flue leaves above the return; common practice: 3 to 8 K at low fire, 5 to 15 K at full fire. */
  readonly approach: number
  /** Part of the gross heat that the jacket loses. */
  readonly jacketLoss: number
}

/**
 * Efficiency of a boiler at a return temperature by what its flue gas carries off: where the maker gives no curve.
 *
 * @param temperature K, of the return
 *
 * @example
 * const boiler = { fuel: fuelNamed('methane'), excessAir: 0.25, pressure: 101_325, approach: 5, jacketLoss: 0 }
 * efficiencyAtReturn(boiler, 308.15) // value 0.952
 */
export function efficiencyAtReturn({ approach, ...boiler }: BurningBoiler, temperature: number): Sizing {
  const why = firstImpossible(['approach', approach, 'zero or more'], ['return temperature', temperature, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const efficiency = condensingEfficiency({ ...boiler, flueTemperature: temperature + approach })
  if (!efficiency.sized) return efficiency
  return sized({
    ...efficiency,
    working: [
      { name: 'return temperature', value: temperature, unit: 'K' },
      { name: 'flue above the return', value: approach, unit: 'K' },
      ...efficiency.working,
    ],
  })
}

interface FiredSeason {
  readonly bins: readonly WeatherBin[]
  readonly design: ResetDesign
  readonly curve: readonly EfficiencyPoint[]
}

/**
 * Efficiency over a season: heat of all bins over the fuel of all bins, each at its own return temperature.
 *
 * @example
 * seasonEfficiency({ bins, design, curve })
 */
export function seasonEfficiency({ bins, design, curve }: FiredSeason): Sizing {
  const why = firstImpossible(
    ...bins.map(({ hours }) => ['hours of a bin', hours, 'zero or more'] as const),
    ...curve.map(({ efficiency }) => ['efficiency of a point', efficiency, 'above zero'] as const),
  )
  if (why !== undefined) return cannotSize(why)
  const lines = bins.map((bin) => binLine(bin, design, curve))
  for (const { efficiency } of lines) if (!efficiency.sized) return efficiency
  const heat = lines.reduce((sum, line) => sum + line.heat, 0)
  if (heat === 0) return cannotSize('The bins have no hour that needs heat.')
  const fuel = lines.reduce((sum, line) => sum + (line.efficiency.sized ? line.heat / line.efficiency.value : 0), 0)
  return sized({
    value: heat / fuel,
    working: [
      { name: 'hours at full load that make the heat', value: heat, unit: 'h' },
      { name: 'the same in fuel', value: fuel, unit: 'h' },
      { name: 'efficiency of the season', value: heat / fuel, unit: '1' },
    ],
    assumed: ['the supply follows what the emitters need', 'starts and standstill left out'],
    valid: lines.every(({ heat: needed, efficiency }) => needed === 0 || (efficiency.sized && efficiency.valid)),
  })
}

/**
 * Part of the fuel that a better efficiency saves.
 *
 * @example
 * fuelSaved({ before: 0.87, after: 0.94 }) // value 0.0745
 */
export function fuelSaved({ before, after }: { readonly before: number; readonly after: number }): Sizing {
  const why = firstImpossible(['efficiency before', before, 'a share'], ['efficiency after', after, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const value = 1 - before / after
  return sized({
    value,
    working: [
      { name: 'fuel after over before', value: before / after, unit: '1' },
      { name: 'fuel saved', value, unit: '1' },
    ],
    assumed: [],
    valid: after <= 1,
  })
}

interface BinLine {
  readonly heat: number
  readonly efficiency: Sizing
}

function binLine({ outdoor, hours }: WeatherBin, design: ResetDesign, curve: readonly EfficiencyPoint[]): BinLine {
  const [share, back] = [loadShare(design, outdoor), resetReturn(design, outdoor)]
  if (!share.sized) return { heat: 0, efficiency: share }
  return { heat: hours * share.value, efficiency: back.sized ? makerEfficiency(curve, back.value) : back }
}
