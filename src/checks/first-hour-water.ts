import { indirectTank } from '../model/index.js'
import { firstHourOf } from './sizes/hot-water-sizes.js'
import { sizedFact } from './sized-fact.js'

/** Mixed hot water that the tank and its boilers give in the first hour of steady draw. */
export const firstHourWater = sizedFact('firstHourWater', {
  of: indirectTank,
  quantity: 'volume',
  size: (context, take) => firstHourOf(context, take, context.subject),
})
