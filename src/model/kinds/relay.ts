import { poweredDevice } from '../families.js'
import { reference } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A relay by which a low-voltage call switches a pump or a burner. */
export const relay = kind('relay', {
  spoken: 'relay',
  place: 'electrical',
  families: [poweredDevice],
  draws: 'switched',
  fields: {
    ...poweredDevice.fields,
    /** What it switches. */
    switches: reference(['circulator', 'recirculationPump', 'boiler'], { countedAs: 'relays' }),
  },
})

/** A relay as written: plain text values. */
export interface RelayWritten extends WrittenOf<typeof relay> {}
