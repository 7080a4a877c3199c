import { pressurePart } from '../families.js'
import { quantity } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A wide body that joins a boiler circuit and a system circuit without making either pump push the other. */
export const hydraulicSeparator = kind('hydraulicSeparator', {
  spoken: 'hydraulic separator',
  place: 'boiler',
  families: [pressurePart],
  ports: {
    boilerSupply: 'heatingWater',
    boilerReturn: 'heatingWater',
    systemSupply: 'heatingWater',
    systemReturn: 'heatingWater',
  },
  through: ['boilerSupply', 'systemSupply'],
  ways: [
    { between: ['boilerSupply', 'boilerReturn'], closes: 'never' },
    { between: ['boilerSupply', 'systemSupply'], closes: 'never' },
    { between: ['boilerSupply', 'systemReturn'], closes: 'never' },
    { between: ['boilerReturn', 'systemSupply'], closes: 'never' },
    { between: ['boilerReturn', 'systemReturn'], closes: 'never' },
    { between: ['systemSupply', 'systemReturn'], closes: 'never' },
  ],
  fields: {
    ...pressurePart.fields,
    /** Water it holds; gallons, above zero. */
    volume: quantity('volume'),
    /** Highest flow for which its maker rates it; gpm, above zero. */
    maximumFlow: quantity('volumeFlow'),
    /** Size of its connections; nominal inches, commonly 1 to 3. */
    size: quantity('nominalSize'),
  },
})

/** A hydraulic separator as written: plain text values. */
export interface HydraulicSeparatorWritten extends WrittenOf<typeof hydraulicSeparator> {}
