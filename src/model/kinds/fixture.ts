import { choice, quantity, reference, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { EntryWritten, ItemWritten } from '../written.js'

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
    supply: reference('hotWaterSource', { countedAs: 'fixtures' }),
    /** Whether a bath or shower has its own listed valve that limits the temperature. */
    ownValve: yesNo,
    /** Whether it is put in by this job or stays from before. */
    work: choice({ new: 'new work', kept: 'kept work' }),
    /** Listing of the valve of its own. */
    ownValveListing: choice({
      'pressure-balance': 'pressure balancing (ASSE 1016)',
      thermostatic: 'thermostatic (ASSE 1016)',
      combination: 'combined (ASSE 1016)',
      'point-of-use': 'point of use (ASSE 1070)',
      'not-listed': 'not listed',
    }),
    /** Whether people use it who cannot get out of hot water by themselves. */
    vulnerableUsers: yesNo,
    /** Whether only staff use it, and a label says that its water is hot. */
    staffOnly: yesNo,
    /** Temperature at which its water is used; degF, commonly 100 to 120. */
    usedAt: quantity('temperature'),
    /** Mixed water that it draws; gpm, commonly 0.5 to 5. */
    flow: quantity('volumeFlow'),
    /** Mixed water that one use takes; gallons, commonly 2 to 40. */
    draw: quantity('volume'),
  },
})

/** A fixture as written: plain text values. */
export interface FixtureWritten extends ItemWritten<typeof fixture> {
  /** Whether all hot water of the fixture passes a mixing valve between the source and its outlet. */
  readonly tempered?: EntryWritten<'yes' | 'no'>
}
