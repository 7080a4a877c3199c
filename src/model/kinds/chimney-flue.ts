import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'
import { chimneyInlet } from './chimney-inlet.js'

/** One flue of a chimney that carries flue gas up by natural draft. */
export const chimneyFlue = kind('chimneyFlue', {
  spoken: 'chimney flue',
  place: 'vent',
  fields: {
    /** Area inside the flue or its liner; square inches, above zero. */
    area: quantity('area'),
    /** What the flue gas touches. */
    liner: choice({ clay: 'clay liner', 'metal-liner': 'metal liner', unlined: 'unlined masonry' }),
    /** Height from the lowest appliance connection to the top; feet, above zero. */
    height: quantity('length'),
    /** Whether one or more sides of the chimney stand outdoors below the roof. */
    exterior: yesNo,
    /** How many unused inlets stand open into it; a whole number from 0. */
    openInlets: quantity('count'),
    /** The cover that keeps rain out of its top. */
    topCover: choice({ fitted: 'fitted', missing: 'missing' }),
    /** Whether it was looked through from end to end. */
    inspected: yesNo,
  },
  parts: { inlets: chimneyInlet },
})

/** A chimney flue as written: plain text values. */
export interface ChimneyFlueWritten extends WrittenOf<typeof chimneyFlue> {}
