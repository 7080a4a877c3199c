import { listOf, quantity, reference, yesNo } from '../field.js'
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
    /** Voltage that it gives; volts, commonly 24. */
    secondaryVoltage: quantity('voltage'),
    /** Whether it is listed as class 2. */
    classTwo: yesNo,
    /** Whether a fuse or breaker guards its secondary. */
    isProtected: yesNo,
    /** Whether its secondary is tied to that of another transformer. */
    secondaryJoined: yesNo,
  },
})

/** A transformer as written: plain text values. */
export interface TransformerWritten extends WrittenOf<typeof transformer> {}
