import { choice, quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** The conductor that joins gas tubing to the electrodes of the building. */
export const gasBond = kind('gasBond', {
  spoken: 'gas bond',
  place: 'gas',
  fields: {
    /** Gauge of the copper conductor; an AWG number, commonly 6. */
    conductor: quantity('count'),
    /** What it is clamped to. */
    attachedTo: choice({
      'rigid-pipe': 'rigid gas pipe',
      'tubing-fitting': 'a fitting of the tubing',
      meter: 'the meter',
    }),
    /** Where its other end is joined. */
    electrode: choice({
      'building-ground': 'grounding electrodes of the building',
      'own-rod': 'a rod of its own',
      other: 'something else',
    }),
  },
})

/** A gas bond as written: plain text values. */
export interface GasBondWritten extends WrittenOf<typeof gasBond> {}
