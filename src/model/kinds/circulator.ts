import { pressurePart } from '../families.js'
import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { EntryWritten, WrittenOf } from '../written.js'
import { pumpPoint } from './pump-point.js'

/** A pump that moves heating water round a circuit. */
export const circulator = kind('circulator', {
  spoken: 'circulator',
  place: 'boiler',
  families: [pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never', checks: { when: 'checkBuiltIn', is: 'yes' } }],
  fields: {
    ...pressurePart.fields,
    /** Whether a check valve is built into its body and in use. */
    checkBuiltIn: yesNo,
    /** What it pumps through. */
    serves: choice({ system: 'the whole system', boiler: 'the boiler', zone: 'a zone', tank: 'the tank coil' }),
    /** How its speed is set. */
    mode: choice({
      'constant-speed': 'constant speed',
      'constant-pressure': 'constant head',
      'proportional-pressure': 'head that follows the flow',
      temperature: 'by temperature',
    }),
    /** How its speed is set while hot water is made. */
    hotWaterMode: choice({ same: 'the same', 'full-speed': 'full speed' }),
    /** Head to which it is set; feet of the fluid, commonly 2 to 20. */
    setHead: quantity('head'),
    /** Lowest pressure at its inlet that the maker allows at the hottest water; psi, commonly 1 to 10. */
    minimumSuction: quantity('pressure'),
    /** What its body is made of. */
    material: choice({ iron: 'iron', bronze: 'bronze', stainless: 'stainless steel' }),
    /** Current that it draws; amperes, commonly 0.3 to 3. */
    current: quantity('current'),
    /** Whether it can be taken out between flanges or valves on both sides. */
    isolationFlanges: yesNo,
  },
  parts: { curve: pumpPoint },
})

/** A circulator as written: plain text values. */
export interface CirculatorWritten extends WrittenOf<typeof circulator> {
  /** Whether a way stays open from the outlet of the pump back to its inlet when every valve shuts that shuts by itself; a bypass valve opens. */
  readonly wayRound?: EntryWritten<'yes' | 'no'>
}
