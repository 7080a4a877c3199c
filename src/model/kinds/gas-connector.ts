import { quantity, reference, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A flexible connector between gas piping and an appliance. */
export const gasConnector = kind('gasConnector', {
  spoken: 'gas connector',
  place: 'gas',
  fields: {
    /** The appliance that it feeds. */
    appliance: reference('fuelBurner', { countedAs: 'gasConnectors' }),
    /** Its length; feet, above zero. */
    length: quantity('length'),
    /** Whether it passes through a wall, floor, ceiling or casing. */
    throughWall: yesNo,
  },
})

/** A gas connector as written: plain text values. */
export interface GasConnectorWritten extends WrittenOf<typeof gasConnector> {}
