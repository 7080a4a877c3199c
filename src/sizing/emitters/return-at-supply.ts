import { fallingRoot } from '../falling-root.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { whyNoRating } from './emitter-output.js'
import { logMean } from './mean-excess.js'
import type { FlowingEmitter } from './supply-for-load.js'

interface SuppliedEmitter extends FlowingEmitter {
  /** K */
  readonly supply: number
}

/**
 * Return temperature of an emitter at a supply temperature and flow: where the heat that the water loses is the heat that the
 * emitter gives.
 *
 * @returns K
 *
 * @example
 * const rating = panelRadiator({ output: 1500, exponent: 1.3 })
 * returnAtSupply({ rating, air: 293.15, flowCapacity: 83.6, supply: 343.15 }) // value 328.637, or 55.487 C
 */
export function returnAtSupply({ rating, air, flowCapacity, supply }: SuppliedEmitter): Sizing {
  const why =
    whyNoRating(rating) ??
    firstImpossible(
      ['air temperature', air, 'above zero'],
      ['heat capacity of the flow', flowCapacity, 'above zero'],
      ['supply temperature', supply, 'above zero'],
    )
  if (why !== undefined) return cannotSize(why)
  const warm = supply - air
  if (warm < 0) return cannotSize(`Water at ${supply} K cannot heat air at ${air} K.`)
  const given = (cool: number): number => rating.output * (logMean(warm, cool) / rating.excess) ** rating.exponent
  const tiny = warm * 1e-12
  const cool = warm === 0 ? 0 : fallingRoot((x) => flowCapacity * (warm - x) - given(x), tiny, warm)
  const [value, output] = [air + cool, flowCapacity * (warm - cool)]
  return sized({
    value,
    working: [
      { name: 'supply above the air', value: warm, unit: 'K' },
      { name: 'return above the air', value: cool, unit: 'K' },
      { name: 'output', value: output, unit: 'W' },
      { name: 'return temperature', value, unit: 'K' },
    ],
    assumed: ['logarithmic mean'],
    valid: warm <= 2 * rating.excess,
  })
}

/**
 * Part of the time that a zone runs when the system's supply is warmer than it needs; above 1 it does not get warm.
 *
 * @example
 * zoneRunningShare({ rating, air: 293.15, flowCapacity: 83.6, supply: 343.15, load: 606 }) // value 0.5
 */
export function zoneRunningShare({ load, ...emitter }: SuppliedEmitter & { readonly load: number }): Sizing {
  const why = firstImpossible(['load', load, 'zero or more'])
  if (why !== undefined) return cannotSize(why)
  const back = returnAtSupply(emitter)
  if (!back.sized) return back
  const output = emitter.flowCapacity * (emitter.supply - back.value)
  if (output <= 0) return cannotSize(`With water at ${emitter.supply} K the emitter gives nothing.`)
  const value = load / output
  return sized({
    ...back,
    value,
    working: [...back.working, { name: 'load', value: load, unit: 'W' }, { name: 'running share', value, unit: '1' }],
  })
}
