import { choice, quantity, yesNo } from '../field.js'
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
