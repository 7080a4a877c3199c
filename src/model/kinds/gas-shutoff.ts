import { closable } from '../families.js'
import { reference, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A hand valve that cuts off gas. */
export const gasShutoff = kind('gasShutoff', {
  spoken: 'gas shutoff valve',
  place: 'gas',
  families: [closable],
  ports: { a: 'gas', b: 'gas' },
  through: ['a', 'b'],
  ways: [{ between: ['a', 'b'], closes: 'always' }],
  fields: {
    ...closable.fields,
    /** Whether a person can reach it without tools. */
    accessible: yesNo,
    /** The appliance that it cuts off. */
    appliance: reference('gasAppliance', { countedAs: 'gasShutoffs' }),
  },
})

/** A gas shutoff valve as written: plain text values. */
export interface GasShutoffWritten extends WrittenOf<typeof gasShutoff> {}
