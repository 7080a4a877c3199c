import { choice, listOf, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { EntryWritten, SingletonWritten } from '../written.js'

/** What the heating system is filled with. */
export const heatingFluid = kind('heatingFluid', {
  spoken: 'heating fluid',
  section: 'singleton',
  place: 'fill',
  fields: {
    /** Antifreeze in the water, or that there is none. */
    antifreeze: choice({
      'no-antifreeze': 'no antifreeze',
      'propylene-glycol': 'propylene glycol',
      'ethylene-glycol': 'ethylene glycol',
      unlisted: 'antifreeze not listed for heating systems',
    }),
    /** Antifreeze by volume; percent, 0 to 100, commonly 25 to 50. */
    concentration: quantity('fraction'),
    /** Chemicals added to the water beside antifreeze; an empty list says that there are none. */
    additives: listOf(
      choice({
        inhibitor: 'corrosion inhibitor',
        cleaner: 'system cleaner',
        sealant: 'leak sealant',
        other: 'other chemical',
      }),
    ),
    /** Whether the label says that all that was added is food grade. */
    foodGradeLabel: yesNo,
    /** Temperature at which ice begins to form, by its maker; degF, commonly -60 to 32. */
    freezePoint: quantity('temperature'),
    /** Temperature at which the system is filled; degF, commonly 40 to 60. */
    fillTemperature: quantity('temperature'),
    /** Hottest mean of supply and return; degF, commonly 120 to 190. */
    highestMean: quantity('temperature'),
    /** Acidity; pH, commonly 7 to 10. */
    pH: quantity('number'),
    /** Day on which the system was last flushed; a date. */
    flushedOn: quantity('date'),
    /** Day on which strength and inhibitor were last checked; a date. */
    checkedOn: quantity('date'),
  },
})

/** The heating fluid section as written. */
export interface HeatingFluidWritten extends SingletonWritten<typeof heatingFluid> {
  /** Whether heating water freezes somewhere in its pipe: a line without frost protection runs through a place that gets colder than the temperature at which ice begins to form. Pipe in heated space counts as warm. */
  readonly canFreeze?: EntryWritten<'yes' | 'no'>
}
