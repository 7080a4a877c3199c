import { pressurePart, waterVessel } from '../families.js'
import { quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A tank of heating water that lets a burner run longer than the smallest zone asks for. */
export const bufferTank = kind('bufferTank', {
  spoken: 'buffer tank',
  place: 'boiler',
  families: [pressurePart, waterVessel],
  ports: { hotIn: 'heatingWater', hotOut: 'heatingWater', coldOut: 'heatingWater', coldIn: 'heatingWater' },
  through: ['hotIn', 'hotOut'],
  ways: [
    { between: ['hotIn', 'hotOut'], closes: 'never' },
    { between: ['hotIn', 'coldOut'], closes: 'never' },
    { between: ['hotIn', 'coldIn'], closes: 'never' },
    { between: ['hotOut', 'coldOut'], closes: 'never' },
    { between: ['hotOut', 'coldIn'], closes: 'never' },
    { between: ['coldOut', 'coldIn'], closes: 'never' },
  ],
  fields: {
    ...pressurePart.fields,
    ...waterVessel.fields,
    /** Heating water it holds; gallons, above zero. */
    volume: quantity('volume'),
  },
})

/** A buffer tank as written: plain text values. */
export interface BufferTankWritten extends WrittenOf<typeof bufferTank> {}
