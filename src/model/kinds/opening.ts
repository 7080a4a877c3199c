import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'

/** An opening of the building near a vent termination, through which flue gas could come in. */
export const opening = kind('opening', {
  spoken: 'building opening',
  section: 'parts',
  place: 'vent',
  fields: {
    /** What the opening is. */
    type: choice({
      'operable-window': 'window that opens',
      door: 'door',
      'gravity-inlet': 'gravity air inlet',
      'forced-inlet': 'forced air inlet',
    }),
    /** Shortest distance from the termination to the opening; inches or feet, above zero. */
    distance: quantity('length'),
    /** Part of that distance along the wall; inches, zero or more. */
    horizontalDistance: quantity('length'),
    /** Part of that distance up or down; inches, zero or more. */
    verticalDistance: quantity('length'),
    /** Whether the opening lies above the termination. */
    above: yesNo,
  },
})
