import { emitter } from '../model/index.js'
import { outputAtDesignWater } from './sizes/emitter-sizes.js'
import { sizedFact } from './sized-fact.js'

/** Heat that the emitter gives with the water for which its zone is designed. */
export const outputAtDesign = sizedFact('outputAtDesign', {
  of: emitter,
  quantity: 'heatRate',
  size: (context, take) => outputAtDesignWater(context, take, context.subject),
})
