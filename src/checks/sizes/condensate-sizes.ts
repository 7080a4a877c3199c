import type { Context } from '../../facts/index.js'
import { boiler, neutralizer, reading } from '../../model/index.js'
import { cannotSize, condensateRate, type Sizing } from '../../sizing/index.js'
import { fuelNamed } from '../../tables/index.js'
import { airFreeMonoxide } from '../air-free-monoxide.js'
import { carbonDioxideGap } from '../carbon-dioxide-gap.js'
import { chain, over, stated } from './chain.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'

const waterDensity = 1000

/** Condensate of each boiler, what its neutralizer is rated for, and what the printed slips say. */
export function condensateSizes(context: Context): readonly SizeLine[] {
  const { ask, listed } = context
  const boilers = listed(boiler).things.map((one) =>
    sizeLine({ name: 'most condensate', of: one.id, readAs: 'drip' }, 'volumeFlow', (take) => {
      const fuel = take.word(ask('fuel', one))
      return chain(mostCondensate(fuel, take.number(ask('input', one))), (mass) =>
        over('condensate by volume', mass, waterDensity, 'm3/s'),
      )
    }),
  )
  const neutralizers = listed(neutralizer).things.map((one) =>
    sizeLine({ name: 'input that it is rated for', of: one.id }, 'heatRate', (take) =>
      stated('plate of the neutralizer', take.number(ask('ratedInput', one)), 'W'),
    ),
  )
  return [...boilers, ...neutralizers, ...slipLines(context)]
}

function slipLines({ ask, listed }: Context): readonly SizeLine[] {
  const slips = listed(reading).things.filter((one) => ask('oxygen', one).state === 'number')
  const line = (name: string, fact: typeof airFreeMonoxide, unit: 'concentration' | 'fraction'): readonly SizeLine[] =>
    slips.map((one) =>
      sizeLine({ name, of: one.id }, unit, (take: Taking) =>
        stated('as printed on the slip', take.number(ask(fact, one)), '1'),
      ),
    )
  return [
    ...line('CO without the air that dilutes it', airFreeMonoxide, 'concentration'),
    ...line('CO2 on the slip off from its oxygen by', carbonDioxideGap, 'fraction'),
  ]
}

function mostCondensate(fuel: string, heatInput: number): Sizing {
  if (fuel !== 'natural-gas' && fuel !== 'propane') return cannotSize('Condensate is worked out for gas only.')
  return condensateRate({ fuel: fuelNamed(fuel), heatInput, condensedShare: 1 })
}
