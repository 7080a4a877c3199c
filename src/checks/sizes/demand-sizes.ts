import type { Context } from '../../facts/index.js'
import { fixture, indirectTank, water, type Thing } from '../../model/index.js'
import { hotWaterDemand, hotWaterLeft, tankForDemand, type Sizing } from '../../sizing/index.js'
import { si } from '../../units/index.js'
import { askOnce } from '../ask-once.js'
import { chain } from './chain.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'
import { delivered, givenIn, tankSupply } from './tank-supply.js'

const periods = [
  { spoken: 'ten minutes', period: si('time', '10 min') },
  { spoken: 'an hour', period: si('time', '1 h') },
] as const

/** What the fixtures draw, each once, against what a tank gives meanwhile. */
export function demandSizes(context: Context): readonly SizeLine[] {
  const drawn = context.listed(fixture).things.filter((one) => context.ask('draw', one).state === 'number')
  if (drawn.length === 0) return []
  const tanks = context.listed(indirectTank).things
  const only = tanks.length === 1 ? tanks : []
  return [
    sizeLine({ name: 'demand of one hour, at the mixed temperature' }, 'volume', (take) =>
      demand(context, take, drawn),
    ),
    ...only.flatMap((tank) => periods.flatMap((one) => linesOf(context, { drawn, tank, ...one }))),
  ]
}

interface Drawing {
  readonly drawn: readonly Thing[]
  readonly tank: Thing
  readonly spoken: string
  readonly period: number
}

function linesOf(context: Context, { drawn, tank, spoken, period }: Drawing): readonly SizeLine[] {
  const of = tank.id
  return [
    sizeLine({ name: `left when all is drawn within ${spoken}, mixed`, of }, 'volume', (take) =>
      chain(demand(context, take, drawn), (wanted) =>
        chain(givenIn(context, take, { tank, period }), (deliverable) => hotWaterLeft({ deliverable, demand: wanted })),
      ),
    ),
    sizeLine({ name: `smallest tank for all within ${spoken}`, of }, 'volume', (take) =>
      chain(demand(context, take, drawn), (wanted) =>
        tankForDemand({ ...tankSupply(context, take, tank), demand: wanted, period }),
      ),
    ),
  ]
}

function demand(context: Context, take: Taking, drawn: readonly Thing[]): Sizing {
  const { ask } = context
  return hotWaterDemand({
    fixtures: drawn.map((one) => ({
      name: one.id,
      volume: take.number(ask('draw', one)),
      temperature: temperatureOf(context, take, one),
    })),
    cold: take.number(askOnce(context, water, 'coldest')),
    delivered: delivered(context, take),
  })
}

/** As it is used, or else the hottest that it gives, which asks more. */
function temperatureOf({ ask }: Context, take: Taking, one: Thing): number {
  const used = ask('usedAt', one)
  return take.number(used.state === 'number' ? used : ask('hotWater', one))
}
