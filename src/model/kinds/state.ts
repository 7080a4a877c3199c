import { listOf, reference } from '../field.js'
import { kind } from '../kind.js'
import type { ItemWritten } from '../written.js'

/** A control state: what stands open and what is energized together. */
export const state = kind('state', {
  spoken: 'control state',
  section: 'states',
  place: 'electrical',
  fields: {
    /** The valves that stand open. */
    open: listOf(reference(['zoneValve', 'closable'])),
    /** The devices that draw power beside those that always do. */
    energized: listOf(reference('poweredDevice')),
  },
})

/** A state is known by its name; it has no id. */
export interface StateWritten extends Omit<ItemWritten<typeof state>, 'id' | 'name'> {
  readonly name: string
}
