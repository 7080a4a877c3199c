import { pressurePart } from '../families.js'
import { quantity, reference } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A switch that stops the burner when too little water flows past it. */
export const flowSwitch = kind('flowSwitch', {
  spoken: 'flow switch',
  place: 'boiler',
  families: [pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: {
    ...pressurePart.fields,
    /** Flow below which it opens; gpm, above zero. */
    setFlow: quantity('volumeFlow'),
    /** The boiler whose burner it stops. */
    boiler: reference('boiler', { countedAs: 'flowSwitches' }),
  },
})

/** A flow switch as written: plain text values. */
export interface FlowSwitchWritten extends WrittenOf<typeof flowSwitch> {}
