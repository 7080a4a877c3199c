import { choice, quantity, reference, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** An opening or duct that brings air to the burners in a room. */
export const combustionAirOpening = kind('combustionAirOpening', {
  spoken: 'combustion air opening',
  place: 'vent',
  fields: {
    /** The space that gets the air. */
    space: reference('space', { countedAs: 'combustionAirOpenings' }),
    /** Free area of the opening, louvers taken off; square inches, above zero. */
    area: quantity('area'),
    /** Area of the hole in the wall, louver and all; square inches, above zero. */
    grossArea: quantity('area'),
    /** The louver before it. */
    louver: choice({ open: 'no louver', metal: 'metal louver', wood: 'wooden louver' }),
    /** Where the air comes from. */
    to: choice({ outdoors: 'outdoors', indoors: 'another room' }),
    /** How high it opens into the space. */
    position: choice({ high: 'within 12 in of the ceiling', low: 'within 12 in of the floor', between: 'between' }),
    /** How the air reaches the space. */
    way: choice({ direct: 'straight through the wall', vertical: 'vertical duct', horizontal: 'horizontal duct' }),
    /** Whether anything covers it. */
    blocked: yesNo,
  },
})

/** A combustion air opening as written: plain text values. */
export interface CombustionAirOpeningWritten extends WrittenOf<typeof combustionAirOpening> {}
