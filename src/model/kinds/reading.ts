import { choice, quantity, text } from '../field.js'
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
    /** What the instrument was held into or on. */
    sample: choice({
      'flue-gas': 'flue gas',
      'gas-inlet': 'gas before the appliance',
      'heating-water': 'heating water',
      'hot-water': 'hot water at a tap',
      other: 'something else',
    }),
    /** Firing rate at which it was read. */
    firing: choice({ high: 'high fire', low: 'low fire' }),
    /** Oxygen in the dry flue gas; percent, 0 to 20.9. */
    oxygen: quantity('fraction'),
    /** Carbon dioxide in the dry flue gas; percent, 0 to about 15. */
    carbonDioxide: quantity('fraction'),
    /** Carbon monoxide in the dry flue gas, as the analyzer showed it; ppm, zero or more. */
    carbonMonoxide: quantity('concentration'),
  },
})

/** A reading as written: plain text values. */
export interface ReadingWritten extends ItemWritten<typeof reading> {}
