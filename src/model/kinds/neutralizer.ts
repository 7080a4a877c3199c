import { quantity, reference } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A cartridge of limestone or the like that takes the acid out of condensate. */
export const neutralizer = kind('neutralizer', {
  spoken: 'condensate neutralizer',
  place: 'condensate',
  ports: { in: 'condensate', out: 'condensate' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: {
    /** Highest boiler input for which its maker rates it; Btu/h, above zero. */
    ratedInput: quantity('heatRate'),
    /** Day on which its medium was last filled or renewed; a date. */
    mediumRenewedOn: quantity('date'),
    /** The boiler whose condensate it treats. */
    serves: reference('boiler', { countedAs: 'neutralizers' }),
  },
})

/** A condensate neutralizer as written: plain text values. */
export interface NeutralizerWritten extends WrittenOf<typeof neutralizer> {}
