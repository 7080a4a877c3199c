import { choice, quantity, reference } from '../field.js'
import { kind } from '../kind.js'
import type { ItemWritten } from '../written.js'

/** A plumbing fixture at which hot water is used. */
export const fixture = kind('fixture', {
  spoken: 'fixture',
  section: 'fixtures',
  place: 'hotWater',
  fields: {
    /** What the fixture is. */
    type: choice({
      bath: 'bath tub',
      shower: 'shower',
      lavatory: 'lavatory',
      'kitchen-sink': 'kitchen sink',
      laundry: 'laundry',
      dishwasher: 'dishwasher',
      other: 'other fixture',
    }),
    /** Hottest water that it delivers, measured or set; degF, commonly 100 to 140. */
    hotWater: quantity('temperature'),
    /** The space in which it stands. */
    space: reference('space'),
  },
})

export interface FixtureWritten extends ItemWritten<typeof fixture> {}
