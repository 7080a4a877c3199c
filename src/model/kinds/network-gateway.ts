import { poweredDevice } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A device that joins controls to a network. */
export const networkGateway = kind('networkGateway', {
  spoken: 'network gateway',
  place: 'electrical',
  families: [poweredDevice],
  draws: 'steady',
  fields: {
    ...poweredDevice.fields,
  },
})

/** A network gateway as written: plain text values. */
export interface NetworkGatewayWritten extends WrittenOf<typeof networkGateway> {}
