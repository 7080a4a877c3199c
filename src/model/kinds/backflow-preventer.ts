import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A device that keeps heating water out of the drinking water. */
export const backflowPreventer = kind('backflowPreventer', {
  spoken: 'backflow preventer',
  place: 'fill',
  ports: { in: 'potableCold', out: 'heatingWater', vent: 'discharge' },
  ways: [{ between: ['in', 'out'], closes: 'never', checks: true }],
  fields: {
    /** What it feeds. */
    service: choice({ 'heating-fill': 'fill of the heating system', other: 'other use' }),
    /** Kind of device, by the standard on its tag. */
    class: choice({
      'air-gap': 'air gap',
      vented: 'intermediate vent (ASSE 1012)',
      'dual-check': 'dual check without vent (ASSE 1024)',
      'double-check': 'double check (ASSE 1015)',
      'reduced-pressure': 'reduced pressure (ASSE 1013)',
    }),
    /** Whether its vent or relief port drains through an air gap. */
    ventAirGap: yesNo,
    /** Height of its lowest part above the floor; inches, zero or more. */
    heightAboveFloor: quantity('length'),
    /** Whether a certified tester has tested it since it was put in, at most a year ago. */
    testCurrent: yesNo,
  },
})

/** A backflow preventer as written: plain text values. */
export interface BackflowPreventerWritten extends WrittenOf<typeof backflowPreventer> {}
