import { quantity, reference, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A flexible connector between gas piping and an appliance. */
export const gasConnector = kind('gasConnector', {
  spoken: 'gas connector',
  place: 'gas',
  ports: { in: 'gas', out: 'gas' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: {
    /** The appliance that it feeds. */
    appliance: reference('fuelBurner', { countedAs: 'gasConnectors' }),
    /** Its length; feet, above zero. */
    length: quantity('length'),
    /** Whether it passes through a wall, floor, ceiling or casing. */
    throughWall: yesNo,
    /** Its size; nominal inches, commonly 1/2 to 1. */
    size: quantity('nominalSize'),
    /** Whether it is listed for this use. */
    listed: yesNo,
    /** Whether its whole length is seen. */
    visible: yesNo,
  },
})

/** A gas connector as written: plain text values. */
export interface GasConnectorWritten extends WrittenOf<typeof gasConnector> {}
