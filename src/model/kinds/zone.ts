import { quantity } from '../field.js'
import { kind } from '../kind.js'
import type { ItemWritten } from '../written.js'

/** A part of the house that one thermostat heats. */
export const zone = kind('zone', {
  spoken: 'zone',
  section: 'zones',
  place: 'boiler',
  fields: {
    /** Heat that it needs at the outdoor design temperature; Btu/h, zero or more. */
    designLoad: quantity('heatRate'),
  },
})

/** A zone as written: plain text values. */
export interface ZoneWritten extends ItemWritten<typeof zone> {}
