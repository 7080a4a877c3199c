import { poweredDevice } from '../families.js'
import { choice, quantity, reference, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'
import { resetPoint } from './reset-point.js'

/** A control that sets the temperature of the heating water, built into a boiler or on the wall. */
export const heatingControl = kind('heatingControl', {
  spoken: 'heating control',
  place: 'electrical',
  families: [poweredDevice],
  draws: 'steady',
  fields: {
    ...poweredDevice.fields,
    /** The boiler that it controls. */
    boiler: reference('boiler', { countedAs: 'controls' }),
    /** How its outdoor reset stands. */
    outdoorReset: choice({ enabled: 'enabled', disabled: 'switched off', missing: 'not there' }),
    /** Supply temperature that it asks for at the outdoor design temperature; degF, commonly 110 to 180. */
    designSupply: quantity('temperature'),
    /** Outdoor temperature above which it stops heating; degF, commonly 55 to 70. */
    warmWeatherShutdown: quantity('temperature'),
    /** Whether heating waits while hot water is made. */
    hotWaterPriority: yesNo,
    /** Longest that heating waits; minutes, commonly 30 to 60. */
    priorityLimit: quantity('time'),
    /** Whether it drops less important loads when the boiler cannot carry all. */
    shedding: choice({ automatic: 'automatic', 'by-hand': 'by hand', missing: 'not there' }),
    /** Where its outdoor sensor hangs. */
    sensorPlace: choice({
      'north-wall': 'north wall',
      'shaded-wall': 'other wall in the shade',
      'sunny-wall': 'wall in the sun',
      indoors: 'indoors',
      missing: 'no sensor',
    }),
    /** Distance from the outdoor sensor to the nearest vent termination; feet, zero or more. */
    sensorDistance: quantity('length'),
    /** Whether it heats when the network is down. */
    worksOffline: yesNo,
  },
  parts: { curve: resetPoint },
})

/** A heating control as written: plain text values. */
export interface HeatingControlWritten extends WrittenOf<typeof heatingControl> {}
