import type { AnalyzerSettings } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { oxygenInAir } from './oxygen-in-air.js'

interface DryFlue {
  readonly settings: AnalyzerSettings
  /** K */
  readonly flueTemperature: number
  /** K, of the combustion air. */
  readonly airTemperature: number
  /** Share of oxygen in the dry flue gas. */
  readonly oxygen: number
}

/**
 * Loss through a flue that does not condense, as analyzers print it: Siegert's formula, on the net heating value.
 *
 * @returns part of the net heat; divide by gross over net before setting it beside a gross figure
 *
 * @example
 * const flue = { flueTemperature: 333.15, airTemperature: 293.15, oxygen: 0.048 }
 * dryFlueLoss({ settings: analyzerSettings('natural-gas'), ...flue }) // value 0.020
 */
export function dryFlueLoss({ settings, flueTemperature, airTemperature, oxygen }: DryFlue): Sizing {
  const why = firstImpossible(
    ['flue temperature', flueTemperature, 'above zero'],
    ['temperature of the combustion air', airTemperature, 'above zero'],
    ['share of oxygen', oxygen, 'zero or more'],
    ['oxygen that the flame has used', oxygenInAir - oxygen, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const rise = flueTemperature - airTemperature
  const perDegree = settings.lossFactor / (100 * (oxygenInAir - oxygen)) + settings.lossConstant
  const value = (rise * perDegree) / 100
  return sized({
    value,
    working: [
      { name: 'flue above combustion air', value: rise, unit: 'K' },
      { name: 'loss for each degree', value: perDegree / 100, unit: '1/K' },
      { name: 'flue loss of the net heat', value, unit: '1' },
    ],
    assumed: ['nothing condenses'],
    valid: rise >= 0,
  })
}
