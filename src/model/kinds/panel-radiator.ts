import { emitter, pressurePart } from '../families.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A flat radiator of welded steel panels. */
export const panelRadiator = kind('panelRadiator', {
  spoken: 'panel radiator',
  place: 'boiler',
  families: [emitter, pressurePart],
  ports: { in: 'heatingWater', out: 'heatingWater' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never' }],
  fields: { ...emitter.fields, ...pressurePart.fields },
})

/** A panel radiator as written: plain text values. */
export interface PanelRadiatorWritten extends WrittenOf<typeof panelRadiator> {}
