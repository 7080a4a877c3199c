import { poweredDevice } from '../families.js'
import { choice } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A relay or zone panel that turns calls for heat into switched valves and pumps. */
export const controlPanel = kind('controlPanel', {
  spoken: 'control panel',
  place: 'electrical',
  families: [poweredDevice],
  draws: 'steady',
  fields: {
    ...poweredDevice.fields,
    /** The contact by which it calls the boiler. */
    endSwitch: choice({ dry: 'dry contact', powered: 'contact with a voltage of its own', missing: 'no contact' }),
  },
})

/** A control panel as written: plain text values. */
export interface ControlPanelWritten extends WrittenOf<typeof controlPanel> {}
