import { listOf, quantity, reference } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** The transformer that feeds low-voltage controls. */
export const transformer = kind('transformer', {
  spoken: 'transformer',
  place: 'electrical',
  fields: {
    /** Power it may deliver, from its nameplate; VA, commonly 20 to 100. */
    rating: quantity('apparentPower'),
    /** The devices that it feeds. */
    feeds: listOf(reference('poweredDevice', { countedAs: 'transformers' })),
  },
})

/** A transformer as written: plain text values. */
export interface TransformerWritten extends WrittenOf<typeof transformer> {}
