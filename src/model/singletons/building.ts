import { choice, quantity } from '../field.js'
import { kind } from '../kind.js'
import type { SingletonWritten } from '../written.js'

/** The building that is heated; its occupancy chooses the family of codes. */
export const building = kind('building', {
  spoken: 'building',
  section: 'singleton',
  place: 'papers',
  fields: {
    /** How the building is used. */
    occupancy: choice({
      dwelling: 'one- or two-family house',
      multifamily: 'building of three or more dwellings',
      care: 'care home or clinic',
      office: 'office',
    }),
    /** Storeys that people use, basement and finished attic included; a whole number from 1. */
    storeys: quantity('count'),
    /** What happened to old insulation that may hold asbestos. */
    oldInsulation: choice({
      'not-there': 'there was none',
      untouched: 'left untouched',
      tested: 'tested before it was cut',
      'cut-untested': 'cut without a test',
    }),
  },
})

/** The building section as written. */
export interface BuildingWritten extends SingletonWritten<typeof building> {}
