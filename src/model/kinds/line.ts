import { choice, group, listOf, quantity, reference, yesNo } from '../field.js'
import { kind } from '../kind.js'
import { pipeType } from '../pipe-type.js'
import type { EntryWritten, LineOf } from '../written.js'

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
      /** Length of pipe that resists like pipe, fittings and valves without a coefficient together; feet, zero or more. */
      equivalentLength: quantity('length'),
      /** Equivalent hydraulic diameter of corrugated gas tubing, a designation; a whole number, commonly 13 to 62. */
      ehd: quantity('count'),
    }),
    /** Where the line runs, at its coldest place. */
    exposure: choice({ heated: 'heated space', unheated: 'unheated space', outdoors: 'outdoors' }),
    /** Whether it is insulated or heat traced where it could freeze. */
    freezeProtected: yesNo,
    /** Whether it is insulated along its whole length. */
    insulated: yesNo,
    /** Whether corrugated gas tubing in it is bonded to the electrode system. */
    bonded: yesNo,
    /** Thickness of the insulation; inches, commonly 1/2 to 2. */
    insulationThickness: quantity('length'),
    /** The spaces that it runs through. */
    spaces: listOf(reference('space')),
    /** Height of its highest place above the boiler gauge; feet, zero or more. */
    highPoint: quantity('length'),
    /** How air gets out at its highest place. */
    highPointVent: choice({ vent: 'an air vent', 'purge-point': 'a purge point', missing: 'nothing' }),
    /** Longest distance between two supports; feet, above zero. */
    supportSpacing: quantity('length'),
  },
})

/** A line as written: plain text values. */
export interface LineWritten extends LineOf<typeof line> {
  /** Whether the line is of heating pipe that lets oxygen through and shares its water with iron or steel. */
  readonly oxygenReachesIron?: EntryWritten<'yes' | 'no'>
}
