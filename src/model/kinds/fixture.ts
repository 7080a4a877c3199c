import { choice, quantity, reference, yesNo } from '../field.js'
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
    /** Where its hot water is stored. */
    supply: reference(['indirectTank', 'waterHeater'], { countedAs: 'fixtures' }),
    /** Whether all its hot water passes a mixing valve. */
    tempered: yesNo,
    /** Whether a bath or shower has its own listed valve that limits the temperature. */
    ownValve: yesNo,
    /** Whether it is put in by this job or stays from before. */
    work: choice({ new: 'new work', kept: 'kept work' }),
  },
})

/** A fixture as written: plain text values. */
export interface FixtureWritten extends ItemWritten<typeof fixture> {}
