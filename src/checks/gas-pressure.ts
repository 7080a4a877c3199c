import type { Context } from '../facts/index.js'
import { fuel, gasAppliance } from '../model/index.js'
import { cannotSize, type Sizing } from '../sizing/index.js'
import { sizedFact } from './sized-fact.js'
import { chain, stated } from './sizes/chain.js'
import { gasLines } from './sizes/gas-sections.js'
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
  const own = gasLines(context, take).find(({ appliances }) => appliances.includes(context.subject.id))
  return own === undefined
    ? cannotSize(`No drawn gas line leads from the meter to ${context.subject.id}.`)
    : pressureAt(context, take, own.section.id)
}
