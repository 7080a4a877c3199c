import type { Context } from '../facts/index.js'
import { fuel, gasAppliance } from '../model/index.js'
import { cannotSize, type Sizing } from '../sizing/index.js'
import { sizedFact } from './sized-fact.js'
import { chain, stated } from './sizes/chain.js'
import { gasLines, gasSections } from './sizes/gas-sections.js'
import { pressureAt } from './sizes/gas-sizes.js'
import { type Taking } from './sizes/size-line.js'
import { askOnce } from './ask-once.js'

/** Gas pressure that is left at the appliance, worked out from the drawn piping with every appliance firing. */
export const pressureLeft = sizedFact('pressureLeft', {
  of: gasAppliance,
  quantity: 'pressure',
  size: left,
})

/** Gas pressure that is lost between the meter and the appliance with every appliance firing. */
export const pressureLost = sizedFact('pressureLost', {
  of: gasAppliance,
  quantity: 'pressure',
  size: (context, take) => {
    const delivery = take.number(askOnce(context, fuel, 'deliveryPressure'))
    return chain(left(context, take), (pressure) => stated('lost on the way', delivery - pressure, 'Pa'))
  },
})

function left(context: Context, take: Taking): Sizing {
  const { id } = context.subject
  const own = gasLines(context).find(({ burners }) => burners.some((one) => one.id === id))
  return own === undefined ? noLine(context, take, id) : pressureAt(context, take, own.thing.id)
}

/** While lines may be missing, so may be the one that leads there. */
function noLine(context: Context, take: Taking, id: string): Sizing {
  gasSections(context, take)
  return cannotSize(`No drawn gas line leads from the meter to ${id}.`)
}
