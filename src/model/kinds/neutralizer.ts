import { quantity, reference, yesNo } from '../field.js'
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
    /** Medium that it holds when full; pounds, above zero. */
    mediumMass: quantity('mass'),
    /** How long its medium lasts, by its maker; months, commonly 12 to 24. */
    renewedEvery: quantity('time'),
    /** Whether it holds its medium. */
    charged: yesNo,
    /** Whether condensate can pass around it. */
    bypassed: yesNo,
  },
})

/** A condensate neutralizer as written: plain text values. */
export interface NeutralizerWritten extends WrittenOf<typeof neutralizer> {}
