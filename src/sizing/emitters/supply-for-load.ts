import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { whyNoRating } from './emitter-output.js'
import type { EmitterRating } from './emitter-rating.js'

/** An emitter with water that flows. */
export interface FlowingEmitter {
  readonly rating: EmitterRating
  /** K, air that enters the emitter. */
  readonly air: number
  /** W/K: mass flow times heat capacity. */
  readonly flowCapacity: number
}

interface LoadedFlow extends FlowingEmitter {
  /** W */
  readonly load: number
}

/**
 * Supply temperature with which an emitter carries a load at a flow: exact for the logarithmic mean, without trial and error.
 *
 * @returns K
 *
 * @example
 * const rating = panelRadiator({ output: 1500, exponent: 1.3 })
 * supplyForLoad({ rating, air: 293.15, flowCapacity: 83.6, load: 1000 }) // value 335.94, or 62.79 C
 */
export function supplyForLoad(emitter: LoadedFlow): Sizing {
  return endTemperature(emitter, 'supply')
}

/**
 * Return temperature that goes with the supply for a load at a flow.
 *
 * @returns K
 *
 * @example
 * returnForLoad({ rating, air: 293.15, flowCapacity: 83.6, load: 1000 }) // value 323.98, or 50.83 C
 */
export function returnForLoad(emitter: LoadedFlow): Sizing {
  return endTemperature(emitter, 'return')
}

/** A zone by name. */
export interface FlowingZone extends LoadedFlow {
  readonly name: string
}

/**
 * Supply temperature of a system: the warmest that a zone needs; the other zones then run for part of the time.
 *
 * @returns K
 *
 * @example
 * systemSupply([{ name: 'first floor', ...emitter, load: 4000 }]) // value as supplyForLoad of the zone
 */
export function systemSupply(zones: readonly FlowingZone[]): Sizing {
  const each = zones.map((zone) => ({ name: zone.name, supply: supplyForLoad(zone) }))
  for (const { name, supply } of each) if (!supply.sized) return cannotSize(`${name}: ${supply.why}`)
  if (each.length === 0) return cannotSize('A system without zones has no supply temperature.')
  const steps = each.flatMap(({ name, supply }) => (supply.sized ? [{ name, value: supply.value, unit: 'K' }] : []))
  const value = Math.max(...steps.map((step) => step.value))
  return sized({
    value,
    working: [...steps, { name: 'supply of the system', value, unit: 'K' }],
    assumed: ['each zone has its design flow'],
    valid: each.every(({ supply }) => supply.sized && supply.valid),
  })
}

function endTemperature({ rating, air, flowCapacity, load }: LoadedFlow, end: 'supply' | 'return'): Sizing {
  const why =
    whyNoRating(rating) ??
    firstImpossible(
      ['rated output', rating.output, 'above zero'],
      ['air temperature', air, 'above zero'],
      ['heat capacity of the flow', flowCapacity, 'above zero'],
      ['load', load, 'zero or more'],
    )
  if (why !== undefined) return cannotSize(why)
  const drop = load / flowCapacity
  const excess = rating.excess * (load / rating.output) ** (1 / rating.exponent)
  const above = load === 0 ? 0 : aboveAir(drop, excess, end)
  const value = air + above
  return sized({
    value,
    working: [
      { name: 'drop of the water', value: drop, unit: 'K' },
      { name: 'logarithmic mean excess for the load', value: excess, unit: 'K' },
      { name: `${end} above the air`, value: above, unit: 'K' },
      { name: `${end} temperature`, value, unit: 'K' },
    ],
    assumed: ['logarithmic mean'],
    valid: excess <= 2 * rating.excess,
  })
}

/** Written with `expm1`, which keeps its digits where the drop is small. */
function aboveAir(drop: number, excess: number, end: 'supply' | 'return'): number {
  const ratio = drop / excess
  if (ratio === 0) return excess
  return end === 'supply' ? -drop / Math.expm1(-ratio) : drop / Math.expm1(ratio)
}
