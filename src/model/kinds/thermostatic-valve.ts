import { closable, heatingValve, pressurePart } from '../families.js'
import { reference } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A valve on an emitter that closes by itself as the room warms up. */
export const thermostaticValve = kind('thermostaticValve', {
  spoken: 'thermostatic radiator valve',
  place: 'boiler',
  families: [closable, heatingValve, pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'always' }],
  fields: {
    ...closable.fields,
    ...heatingValve.fields,
    ...pressurePart.fields,
    /** The emitter that it stands at. */
    serves: reference('emitter', { countedAs: 'thermostaticValves' }),
  },
})

/** A thermostatic radiator valve as written: plain text values. */
export interface ThermostaticValveWritten extends WrittenOf<typeof thermostaticValve> {}
