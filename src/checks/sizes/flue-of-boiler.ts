import { unknown, type Context } from '../../facts/index.js'
import { reading, site, type Thing } from '../../model/index.js'
import { atmosphericPressure, cannotSize, excessAir, type Sizing } from '../../sizing/index.js'
import { fuelNamed, type Fuel } from '../../tables/index.js'
import { askOnce } from '../ask-once.js'
import { chain } from './chain.js'
import type { Taking } from './size-line.js'

/** Flue gas of a boiler as it was measured. */
export interface MeasuredFlue {
  readonly fuel: Fuel
  /** Share of air beyond what the gas needs. */
  readonly excessAir: number
  /** Pa, absolute. */
  readonly pressure: number
}

/** Goes on with the flue gas of a boiler by its slip at high fire, or by any slip where none says how it fired. */
export function withFlue(
  context: Context,
  take: Taking,
  { burner, next }: { readonly burner: Thing; readonly next: (flue: MeasuredFlue) => Sizing },
): Sizing {
  const slip = slipOf(context, burner)
  const oxygen = slip === undefined ? unknown({ missing: [{ subject: reading.name, fact: 'oxygen' }] }) : slip
  return withSlip(context, take, { burner, oxygen: take.number(oxygen), next })
}

interface Slip {
  readonly burner: Thing
  readonly oxygen: number
  readonly next: (flue: MeasuredFlue) => Sizing
}

/** The same from one share of oxygen. */
export function withSlip(context: Context, take: Taking, { burner, oxygen, next }: Slip): Sizing {
  const fuel = gasNamed(take.word(context.ask('fuel', burner)))
  const altitude = take.number(askOnce(context, site, 'altitude'))
  if (fuel === undefined) return cannotSize('Flue gas is worked out for gas only.')
  return chain(atmosphericPressure(altitude), (pressure) =>
    chain(excessAir({ fuel, oxygen }), (air) => next({ fuel, excessAir: air, pressure })),
  )
}

/** The gas of that name, where it is one. */
export function gasNamed(word: string): Fuel | undefined {
  return word === 'natural-gas' || word === 'propane' ? fuelNamed(word) : undefined
}

function slipOf({ ask, listed }: Context, burner: Thing): ReturnType<Context['ask']> | undefined {
  const slips = listed(reading).things.filter((one) => {
    const component = ask('component', one)
    return component.state === 'word' && component.word === burner.id && ask('oxygen', one).state === 'number'
  })
  const high = slips.find((one) => {
    const firing = ask('firing', one)
    return firing.state === 'word' && firing.word === 'high'
  })
  const chosen = high ?? slips[0]
  return chosen === undefined ? undefined : ask('oxygen', chosen)
}
