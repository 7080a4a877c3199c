import { choice, group, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import { pipeType } from '../pipe-type.js'
import type { LineOf } from '../written.js'

/** A run of pipe through the ports of components, in one medium. */
export const line = kind('line', {
  spoken: 'line',
  section: 'lines',
  place: 'boiler',
  fields: {
    /** The pipe that the line is made of. */
    pipe: group({
      /** What the pipe is made of. */
      type: pipeType,
      /** Size of the pipe; nominal inches, commonly 1/2 to 2. */
      size: quantity('nominalSize'),
      /** Length of the pipe, fittings not counted; feet, zero or more. */
      length: quantity('length'),
    }),
    /** Where the line runs, at its coldest place. */
    exposure: choice({ heated: 'heated space', unheated: 'unheated space', outdoors: 'outdoors' }),
    /** Whether it is insulated or heat traced where it could freeze. */
    freezeProtected: yesNo,
    /** Whether it is insulated along its whole length. */
    insulated: yesNo,
    /** Whether corrugated gas tubing in it is bonded to the electrode system. */
    bonded: yesNo,
  },
})

/** A line as written: plain text values. */
export interface LineWritten extends LineOf<typeof line> {}
