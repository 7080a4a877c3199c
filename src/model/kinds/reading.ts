import { quantity, text } from '../field.js'
import { kind } from '../kind.js'
import type { ItemWritten } from '../written.js'

/** A value read from an instrument while the system ran. */
export const reading = kind('reading', {
  spoken: 'reading',
  section: 'readings',
  place: 'papers',
  fields: {
    /** What was read, in words: flue carbon monoxide, supply temperature. */
    quantity: text,
    /** What the instrument showed, with its unit. */
    value: text,
    /** Day on which it was read; a date. */
    at: quantity('date'),
    /** Who read it. */
    by: text,
    /** The instrument, with its last calibration. */
    instrument: text,
    /** What ran, and how, while it was read. */
    condition: text,
  },
})

export interface ReadingWritten extends ItemWritten<typeof reading> {}
