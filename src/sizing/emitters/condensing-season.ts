import { firstImpossible } from '../first-impossible.js'
import { loadShare } from '../load/load-share.js'
import type { WeatherBin } from '../load/weather-bins.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { type ResetDesign, resetReturn } from './outdoor-reset.js'

interface Season {
  readonly bins: readonly WeatherBin[]
  readonly design: ResetDesign
  /** K, warmest return with which the boiler condenses. */
  readonly condensingReturn: number
}

/**
 * Part of the season's heat that is made with a return cool enough to condense.
 *
 * @returns 0 to 1
 *
 * @example
 * condensingShare({ bins, design, condensingReturn: 323.6 })
 */
export function condensingShare({ bins, design, condensingReturn }: Season): Sizing {
  const why = firstImpossible(
    ['warmest return that condenses', condensingReturn, 'above zero'],
    ...bins.map(({ hours }) => ['hours of a bin', hours, 'zero or more'] as const),
  )
  if (why !== undefined) return cannotSize(why)
  const lines = bins.map(({ outdoor, hours }) => ({
    hours,
    share: loadShare(design, outdoor),
    back: resetReturn(design, outdoor),
  }))
  for (const { share, back } of lines) {
    if (!share.sized) return share
    if (!back.sized) return back
  }
  const heats = lines.map(({ hours, share, back }) => {
    const [part, temperature] = [share.sized ? share.value : 0, back.sized ? back.value : Infinity]
    return { hours: part > 0 ? hours : 0, heat: hours * part, condenses: temperature <= condensingReturn }
  })
  const [all, wet] = [heats, heats.filter(({ condenses }) => condenses)]
  const total = sum(all, 'heat')
  if (total === 0) return cannotSize('The bins have no hour that needs heat.')
  const value = sum(wet, 'heat') / total
  return sized({
    value,
    working: [
      { name: 'hours that need heat', value: sum(all, 'hours'), unit: 'h' },
      { name: 'of them with a condensing return', value: sum(wet, 'hours'), unit: 'h' },
      { name: 'hours at full load that make the heat', value: total, unit: 'h' },
      { name: 'of them with a condensing return', value: sum(wet, 'heat'), unit: 'h' },
      { name: 'part of the heat made condensing', value, unit: '1' },
    ],
    assumed: ['the supply follows what the emitters need', 'heat for hot water left out'],
    valid: true,
  })
}

interface BinHeat {
  readonly hours: number
  readonly heat: number
}

function sum(bins: readonly BinHeat[], of: keyof BinHeat): number {
  return bins.reduce((total, bin) => total + bin[of], 0)
}
