import { pressurePart } from '../families.js'
import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** Plates or tubes that pass heat from one heating fluid to another; the fluids stay apart. */
export const heatExchanger = kind('heatExchanger', {
  spoken: 'heat exchanger',
  place: 'boiler',
  families: [pressurePart],
  ports: { hotIn: 'heatingWater', hotOut: 'heatingWater', coldIn: 'heatingWater', coldOut: 'heatingWater' },
  through: ['hotIn', 'hotOut'],
  ways: [
    { between: ['hotIn', 'hotOut'], closes: 'never' },
    { between: ['coldIn', 'coldOut'], closes: 'never' },
  ],
  fields: {
    ...pressurePart.fields,
    /** Walls between the two fluids. */
    walls: choice({ single: 'single wall', double: 'double wall' }),
    /** Whether a leak of either fluid comes out where it is seen. */
    leakPath: yesNo,
    /** Heat that it passes at its rating; Btu/h, above zero. */
    duty: quantity('heatRate'),
    /** Flow on each side at its rating; gpm, above zero. */
    ratedFlow: quantity('volumeFlow'),
    /** Head lost on the hot side at that flow; feet of the fluid, above zero. */
    hotHead: quantity('head'),
    /** Head lost on the cold side at that flow; feet of the fluid, above zero. */
    coldHead: quantity('head'),
  },
})

/** A heat exchanger as written: plain text values. */
export interface HeatExchangerWritten extends WrittenOf<typeof heatExchanger> {}
