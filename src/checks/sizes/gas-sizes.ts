import type { Context } from '../../facts/index.js'
import { fuel, fuelBurner, site } from '../../model/index.js'
import {
  atmosphericPressure,
  cannotSize,
  clockingTime,
  gasDemand,
  gasPressures,
  sizeGasTree,
  type GasPressures,
  type Sizing,
} from '../../sizing/index.js'
import { gasFlow, gasTable, type PipedGas } from '../../tables/index.js'
import { si } from '../../units/index.js'
import { addedUp, chain } from './chain.js'
import { gasLines, gasSections } from './gas-sections.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'
import { askOnce } from '../ask-once.js'

/** Gas that the house burns, what pressure is left at each appliance with all firing, and the smallest pipe by the table. */
export function gasSizes(context: Context): readonly SizeLine[] {
  const { ask, listed } = context
  const burners = listed(fuelBurner).things
  const value = askOnce(context, fuel, 'heatingValue')
  const drawn = gasLines(context)
  return [
    ...burners.map((one) =>
      sizeLine({ name: 'gas that it burns', of: one.id }, 'gasFlow', (take) =>
        gasDemand({ input: take.number(ask('input', one)), heatingValue: take.number(value) }),
      ),
    ),
    ...burners.map((one) =>
      sizeLine({ name: 'time of 2 ft3 on the meter at full fire, all else off', of: one.id }, 'time', (take) =>
        clockingTime({ volume: dial, input: take.number(ask('input', one)), heatingValue: take.number(value) }),
      ),
    ),
    sizeLine({ name: 'gas that all burn together' }, 'gasFlow', (take) => {
      const inputs = take.all(fuelBurner.name, listed(fuelBurner)).map((one) => ({
        name: one.id,
        value: take.number(ask('input', one)),
        unit: 'W',
      }))
      return chain(addedUp('all appliances', inputs, 'W'), (input) =>
        gasDemand({ input, heatingValue: take.number(value) }),
      )
    }),
    ...drawn.flatMap(({ thing, burners }) =>
      burners.map(({ id }) =>
        sizeLine({ name: 'pressure left with everything on', of: id, readAs: 'gas-pressure' }, 'pressure', (take) =>
          pressureAt(context, take, thing.id),
        ),
      ),
    ),
    ...drawn.map(({ thing }) =>
      sizeLine({ name: 'smallest steel pipe by the longest length', of: thing.id }, 'nominalSize', (take) =>
        tableSizeOf(context, take, thing.id),
      ),
    ),
  ]
}

const dial = si('volume', '2 ft3')

/** Pressure at the end of a drawn gas line with everything on. */
export function pressureAt(context: Context, take: Taking, id: string): Sizing {
  const delivery = take.number(askOnce(context, fuel, 'deliveryPressure'))
  const gas = gasOf(context, take)
  if (gas === undefined) return cannotSize('The house is supplied with a fuel that is no gas.')
  const pressures = solved(context, take, { delivery, gas })
  if (!pressures.ok) return cannotSize(pressures.why)
  const end = pressures.ends.find((one) => one.id === id)?.pressure ?? cannotSize(`The line ${id} has no end.`)
  return end
}

interface Supplied {
  readonly delivery: number
  readonly gas: PipedGas
}

function solved(context: Context, take: Taking, { delivery, gas }: Supplied): GasPressures {
  const atmosphere = atmosphericPressure(take.number(askOnce(context, site, 'altitude')))
  const sections = gasSections(context, take)
  const unlisted = sections.find(({ bore }) => 'insideDiameter' in bore && Number.isNaN(bore.insideDiameter))
  if (unlisted !== undefined) return { ok: false, why: `No table lists the pipe of ${unlisted.id}.` }
  const result = gasPressures({
    sections,
    gas: gasFlow(gas),
    heatingValue: take.number(askOnce(context, fuel, 'heatingValue')),
    delivery,
    atmosphere: atmosphere.sized ? atmosphere.value : NaN,
  })
  return atmosphere.sized ? result : { ok: false, why: atmosphere.why }
}

/** The table for natural gas below 2 psi with half an inch of drop; other gases and materials have tables of their own. */
function tableSizeOf(context: Context, take: Taking, id: string): Sizing {
  if (gasOf(context, take) !== 'natural-gas') return cannotSize('The table used here is for natural gas.')
  const tree = sizeGasTree({
    sections: gasSections(context, take),
    table: gasTable('steel-natural-gas-half-inch'),
    heatingValue: take.number(askOnce(context, fuel, 'heatingValue')),
    method: 'longest-length',
  })
  if (!tree.ok) return cannotSize(tree.why)
  return tree.sections.find((one) => one.id === id)?.size ?? cannotSize(`The line ${id} has no end.`)
}

function gasOf(context: Context, take: Taking): PipedGas | undefined {
  const type = take.word(askOnce(context, fuel, 'type'))
  return gases.find((gas) => gas === type)
}

const gases: readonly PipedGas[] = ['natural-gas', 'propane']
