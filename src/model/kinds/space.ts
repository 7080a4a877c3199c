import { choice, quantity, reference, text, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { EntryWritten, ItemWritten } from '../written.js'

/** A room or other space of the house. */
export const space = kind('space', {
  spoken: 'space',
  section: 'spaces',
  place: 'alarms',
  fields: {
    /** The storey it lies on, in the words of the plans. */
    level: text,
    /** What it is used for. */
    use: choice({
      bedroom: 'bedroom',
      bathroom: 'bathroom',
      living: 'living room',
      kitchen: 'kitchen',
      mechanical: 'mechanical room',
      storage: 'storage',
      hall: 'hall',
      stair: 'stairs',
      laundry: 'laundry',
      closet: 'closet',
      office: 'office',
      workshop: 'workshop',
      garage: 'garage',
      attic: 'attic',
      crawlspace: 'crawlspace',
      other: 'other space',
    }),
    /** Whether it stands just outside a sleeping area. */
    outsideSleeping: yesNo,
    /** Floor area; square feet, above zero. */
    area: quantity('area'),
    /** Height of the ceiling; feet, above zero. */
    height: quantity('length'),
    /** Air that it holds; cubic feet, above zero. */
    volume: quantity('volume'),
    /** Air of it and of the spaces open to it together; cubic feet, above zero. */
    communicatingVolume: quantity('volume'),
    /** How easily outdoor air gets in. */
    tightness: choice({ tight: 'tight', average: 'of average tightness', leaky: 'leaky' }),
    /** Whether it is heated. */
    heated: yesNo,
    /** Temperature to which it is heated; degF, commonly 60 to 75. */
    designTemperature: quantity('temperature'),
    /** Coldest that it gets; degF, commonly -20 to 60. */
    lowestTemperature: quantity('temperature'),
    /** Heat that it needs at the outdoor design temperature; Btu/h, zero or more. */
    designLoad: quantity('heatRate'),
    /** The space through which a closet is entered. */
    opensInto: reference('space', { countedAs: 'closets' }),
    /** Height above its floor to which water may stand; inches, zero or more. */
    floodLevel: quantity('length'),
    /** What its air carries. */
    air: choice({
      clean: 'clean air',
      chlorine: 'chlorine or bleach',
      solvents: 'solvents or sprays',
      dust: 'dust or lint',
    }),
  },
})

/** A space as written: plain text values. */
export interface SpaceWritten extends ItemWritten<typeof space> {
  /** Whether openings to the outdoors bring the burners of the space air enough: two, one high and one low, or a single one high up. */
  readonly outdoorAirEnough?: EntryWritten<'yes' | 'no'>
}
