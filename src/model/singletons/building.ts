import { choice, group, quantity, yesNo } from '../field.js'
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
    /** Air changes of the building in an hour, as measured; a number, commonly 0.2 to 1. */
    airChanges: quantity('number'),
    /** Time in which the building loses about two thirds of its warmth without heat; hours, commonly 20 to 100. */
    timeConstant: quantity('time'),
    /** Fuel that was used in a year; therms, above zero. */
    fuelOfYear: quantity('energy'),
    /** Part of the fuel of a year that made hot water, cooked and dried; therms, zero or more. */
    fuelForOtherUses: quantity('energy'),
    /** Fuel that was used in each month, as the bills say. */
    fuelOfMonths: group({
      /** Fuel that was used in January; therms, zero or more. */
      january: quantity('energy'),
      /** Fuel that was used in February; therms, zero or more. */
      february: quantity('energy'),
      /** Fuel that was used in March; therms, zero or more. */
      march: quantity('energy'),
      /** Fuel that was used in April; therms, zero or more. */
      april: quantity('energy'),
      /** Fuel that was used in May; therms, zero or more. */
      may: quantity('energy'),
      /** Fuel that was used in June; therms, zero or more. */
      june: quantity('energy'),
      /** Fuel that was used in July; therms, zero or more. */
      july: quantity('energy'),
      /** Fuel that was used in August; therms, zero or more. */
      august: quantity('energy'),
      /** Fuel that was used in September; therms, zero or more. */
      september: quantity('energy'),
      /** Fuel that was used in October; therms, zero or more. */
      october: quantity('energy'),
      /** Fuel that was used in November; therms, zero or more. */
      november: quantity('energy'),
      /** Fuel that was used in December; therms, zero or more. */
      december: quantity('energy'),
    }),
    /** Part of the heat of that fuel that reached the house; percent, commonly 60 to 85 with an old boiler. */
    seasonEfficiency: quantity('fraction'),
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
