import { choice, group, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { SingletonWritten } from '../written.js'

/** The place where the house stands. */
export const site = kind('site', {
  spoken: 'site',
  section: 'singleton',
  place: 'papers',
  fields: {
    /** Height above sea level; feet, from somewhat below zero to about 14,000. */
    altitude: quantity('length'),
    /** Outdoor winter design temperature for the site; degF, commonly -40 to 50. */
    outdoorDesign: quantity('temperature'),
    /** Heating degree days of a year below their base; F days, commonly 1,000 to 9,000. */
    degreeDays: quantity('degreeDays'),
    /** Outdoor temperature below which the degree days count; degF, commonly 60 to 65. */
    degreeDaysBase: quantity('temperature'),
    /** Mean outdoor temperature of each month of an average year. */
    monthMeans: group({
      /** Mean outdoor temperature of January; degF, commonly -10 to 90. */
      january: quantity('temperature'),
      /** Mean outdoor temperature of February; degF, commonly -10 to 90. */
      february: quantity('temperature'),
      /** Mean outdoor temperature of March; degF, commonly -10 to 90. */
      march: quantity('temperature'),
      /** Mean outdoor temperature of April; degF, commonly -10 to 90. */
      april: quantity('temperature'),
      /** Mean outdoor temperature of May; degF, commonly -10 to 90. */
      may: quantity('temperature'),
      /** Mean outdoor temperature of June; degF, commonly -10 to 90. */
      june: quantity('temperature'),
      /** Mean outdoor temperature of July; degF, commonly -10 to 90. */
      july: quantity('temperature'),
      /** Mean outdoor temperature of August; degF, commonly -10 to 90. */
      august: quantity('temperature'),
      /** Mean outdoor temperature of September; degF, commonly -10 to 90. */
      september: quantity('temperature'),
      /** Mean outdoor temperature of October; degF, commonly -10 to 90. */
      october: quantity('temperature'),
      /** Mean outdoor temperature of November; degF, commonly -10 to 90. */
      november: quantity('temperature'),
      /** Mean outdoor temperature of December; degF, commonly -10 to 90. */
      december: quantity('temperature'),
    }),
    /** Standard deviation of the daily mean temperatures within a winter month; degF, commonly 6 to 10. */
    daySpread: quantity('temperatureDifference'),
    /** Difference between the mean of a day and its warmest hour; degF, commonly 5 to 12. */
    daySwing: quantity('temperatureDifference'),
    /** Depth of snow to be expected on the ground; inches, zero or more. */
    snowLine: quantity('length'),
    /** Seismic design category of the site. */
    seismicCategory: choice({
      'category-A': 'category A',
      'category-B': 'category B',
      'category-C': 'category C',
      'category-D': 'category D',
      'category-E': 'category E',
      'category-F': 'category F',
    }),
    /** Whether it lies where floods are to be expected. */
    floodZone: yesNo,
  },
})

/** The site section as written. */
export interface SiteWritten extends SingletonWritten<typeof site> {}
