import { choice, group, listOf, quantity, text } from '../field.js'
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
    /** Number of the permit. */
    permitNumber: text,
    /** Day on which the permit was given; a date. */
    permitDate: quantity('date'),
    /** How the approved drawings and the house agree. */
    drawings: choice({
      'as-built': 'the house is built as approved',
      revised: 'changed, and the change was approved',
      changed: 'changed, and the change was not approved',
    }),
    /** Inspections that the office makes. */
    stages: listOf(choice({ rough: 'rough', 'gas-test': 'gas test', 'water-test': 'water test', final: 'final' })),
  },
})

/** The jurisdiction section as written. */
export interface JurisdictionWritten extends SingletonWritten<typeof jurisdiction> {}
