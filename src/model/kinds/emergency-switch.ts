import { choice, listOf, reference, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A marked switch that stops the burner from outside the boiler room. */
export const emergencySwitch = kind('emergencySwitch', {
  spoken: 'emergency switch',
  place: 'electrical',
  fields: {
    /** Where it stands. */
    position: choice({
      'stair-head': 'head of the stairs',
      'outside-door': 'outside the boiler room door',
      'in-room': 'inside the boiler room',
    }),
    /** The boilers whose burners it stops. */
    stops: listOf(reference('boiler', { countedAs: 'emergencyStops' })),
    /** Whether it is red and says what it is. */
    marked: yesNo,
  },
})

/** An emergency switch as written: plain text values. */
export interface EmergencySwitchWritten extends WrittenOf<typeof emergencySwitch> {}
