import { choice, text, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { ItemWritten } from '../written.js'

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
      other: 'other space',
    }),
    /** Whether it stands just outside a sleeping area. */
    outsideSleeping: yesNo,
  },
})

/** A space as written: plain text values. */
export interface SpaceWritten extends ItemWritten<typeof space> {}
