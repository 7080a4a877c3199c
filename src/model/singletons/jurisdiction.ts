import { group, listOf, quantity, text } from '../field.js'
import { kind } from '../kind.js'
import type { SingletonWritten } from '../written.js'

/** Who judges the work, and by which editions. */
export const jurisdiction = kind('jurisdiction', {
  spoken: 'jurisdiction',
  section: 'singleton',
  place: 'papers',
  fields: {
    /** Authorities whose overlays apply, by overlay name; an empty list says that there are none. */
    authorities: listOf(text),
    /** Edition adopted of each model code; a year. */
    codes: group({
      /** Residential code; a year. */
      irc: quantity('date'),
      /** Fuel gas code; a year. */
      ifgc: quantity('date'),
      /** Mechanical code; a year. */
      imc: quantity('date'),
      /** Plumbing code; a year. */
      ipc: quantity('date'),
      /** Electrical code; a year. */
      nec: quantity('date'),
    }),
    /** Day on which the permit was applied for; a date. */
    applicationDate: quantity('date'),
  },
})

/** The jurisdiction section as written. */
export interface JurisdictionWritten extends SingletonWritten<typeof jurisdiction> {}
