import { choice, quantity, yesNo } from '../field.js'
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
    /** When it was built; a year. */
    built: quantity('date'),
    /** Floor area that is heated; square feet, above zero. */
    heatedArea: quantity('area'),
    /** Heat that the building needs at the outdoor design temperature, by calculation; Btu/h, above zero. */
    heatLoss: quantity('heatRate'),
    /** Heat that it loses for each degree between indoors and outdoors; Btu/h F, above zero. */
    heatLossCoefficient: quantity('heatLossCoefficient'),
    /** Fuel that was used in a year; therms, above zero. */
    fuelOfYear: quantity('energy'),
    /** Most hot water that is drawn in one hour; gallons, above zero. */
    peakHotWater: quantity('volume'),
    /** How many people can sleep in it; a whole number, zero or more. */
    sleepingPlaces: quantity('count'),
    /** Whether small children, frail or disabled people live in it. */
    vulnerableUsers: yesNo,
    /** Whether it has a basement. */
    basement: yesNo,
  },
})

/** The building section as written. */
export interface BuildingWritten extends SingletonWritten<typeof building> {}
