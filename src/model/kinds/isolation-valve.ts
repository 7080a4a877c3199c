import { closable, heatingValve, pressurePart } from '../families.js'
import { choice, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A hand valve that cuts off heating water. */
export const isolationValve = kind('isolationValve', {
  spoken: 'isolation valve',
  place: 'boiler',
  families: [closable, pressurePart, heatingValve],
  ports: { a: 'heatingWater', b: 'heatingWater' },
  through: ['a', 'b'],
  ways: [{ between: ['a', 'b'], closes: { unless: 'locked', is: 'open' } }],
  fields: {
    ...closable.fields,
    ...pressurePart.fields,
    ...heatingValve.fields,
    /** Whether its handle is locked or removed with the valve open. */
    locked: choice({ open: 'locked open', no: 'not locked' }),
    /** Whether its bore is as wide as the pipe. */
    fullPort: yesNo,
    /** How it shuts. */
    type: choice({
      ball: 'ball valve',
      gate: 'gate valve',
      globe: 'globe valve',
      butterfly: 'butterfly valve',
      'pump-flange': 'isolation flange of a pump',
    }),
    /** Whether a drain is built into it. */
    drainBuiltIn: yesNo,
  },
})

/** An isolation valve as written: plain text values. */
export interface IsolationValveWritten extends WrittenOf<typeof isolationValve> {}
