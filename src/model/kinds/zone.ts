import { choice, listOf, quantity, reference } from '../field.js'
import { kind } from '../kind.js'
import type { ItemWritten } from '../written.js'

/** A part of the house that one thermostat heats. */
export const zone = kind('zone', {
  spoken: 'zone',
  section: 'zones',
  place: 'boiler',
  fields: {
    /** Heat that it needs at the outdoor design temperature; Btu/h, zero or more. */
    designLoad: quantity('heatRate'),
    /** What its heat is for. */
    use: choice({ heating: 'heating', 'snow-melt': 'snow melting', pool: 'pool', other: 'other use' }),
    /** The emitters that it feeds. */
    emitters: listOf(reference('emitter', { countedAs: 'zones' })),
    /** The spaces that it heats. */
    spaces: listOf(reference('space', { countedAs: 'zones' })),
    /** What makes it call. */
    control: choice({
      thermostat: 'a thermostat',
      constant: 'nothing, water circulates all the time',
      'thermostatic-valves': 'thermostatic valves alone',
      other: 'something else',
    }),
    /** The thermostat that calls for it. */
    thermostat: reference('thermostat', { countedAs: 'zones' }),
    /** The valve that opens it. */
    valve: reference(['zoneValve', 'divertingValve', 'isolationValve'], { countedAs: 'zones' }),
    /** The pump of its own. */
    pump: reference('circulator', { countedAs: 'zones' }),
    /** When water can flow through it. */
    openWhen: choice({
      'on-call': 'when it calls',
      always: 'always',
      'except-hot-water': 'always, except while hot water is made',
    }),
    /** Its place when the boiler cannot carry all. */
    priority: choice({ first: 'served first', normal: 'served like the others', 'shed-first': 'dropped first' }),
    /** How its emitters hang on the pipe. */
    layout: choice({
      parallel: 'side by side',
      series: 'one behind the other',
      'single-pipe': 'on one pipe, by diverter tees',
    }),
    /** Supply temperature at the outdoor design temperature; degF, commonly 100 to 180. */
    designSupply: quantity('temperature'),
    /** Difference of supply and return for which it is sized; degF, commonly 10 to 30. */
    designDifference: quantity('temperatureDifference'),
    /** Flow for which it is sized; gpm, above zero. */
    designFlow: quantity('volumeFlow'),
    /** Flow measured with all zones open; gpm, zero or more. */
    measuredFlow: quantity('volumeFlow'),
  },
})

/** A zone as written: plain text values. */
export interface ZoneWritten extends ItemWritten<typeof zone> {}
