import { emitter, pressurePart } from '../families.js'
import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import { pipeType } from '../pipe-type.js'
import type { WrittenOf } from '../written.js'

/** Tubes in or under a floor that warm it. */
export const radiantFloor = kind('radiantFloor', {
  spoken: 'radiant floor',
  place: 'boiler',
  families: [emitter, pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: {
    ...emitter.fields,
    ...pressurePart.fields,
    /** Floor that gives heat, what cabinets cover not counted; square feet, above zero. */
    area: quantity('area'),
    /** How the tubes lie. */
    construction: choice({
      slab: 'concrete slab',
      'thin-slab': 'thin slab over a floor',
      plates: 'plates below a wood floor',
      'joist-space': 'bare tube between joists',
    }),
    /** What the tubes are made of. */
    tube: pipeType,
    /** Distance from tube to tube; inches, commonly 6 to 12. */
    tubeSpacing: quantity('length'),
    /** Length of all its tubes; feet, above zero. */
    tubeLength: quantity('length'),
    /** What people walk on. */
    covering: choice({
      wood: 'wood',
      tile: 'tile or stone',
      carpet: 'carpet',
      concrete: 'bare concrete',
      other: 'other covering',
    }),
    /** Thermal resistance of the covering; h ft2 F/Btu, commonly 0.1 to 2. */
    coveringResistance: quantity('thermalResistance'),
    /** Warmest that the surface may become, by the maker of the covering or by use; degF, commonly 80 to 85. */
    highestSurface: quantity('temperature'),
    /** Hottest water that may be sent to it; degF, commonly 100 to 130. */
    highestWater: quantity('temperature'),
    /** Whether a limit stops water that is too hot for it. */
    limitFitted: yesNo,
    /** Whether the control limits how fast a cold slab is warmed. */
    rampLimited: yesNo,
  },
})

/** A radiant floor as written: plain text values. */
export interface RadiantFloorWritten extends WrittenOf<typeof radiantFloor> {}
