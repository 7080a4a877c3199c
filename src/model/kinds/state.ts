import { choice, listOf, quantity, reference } from '../field.js'
import { kind } from '../kind.js'
import type { EntryWritten, ItemWritten } from '../written.js'

/** A control state: what stands open and what is energized together. */
export const state = kind('state', {
  spoken: 'control state',
  section: 'states',
  place: 'electrical',
  fields: {
    /** The valves that stand open. */
    open: listOf(reference(['zoneValve', 'closable', 'divertingValve', 'bypassValve'])),
    /** The devices that draw power beside those that always do. */
    energized: listOf(reference('poweredDevice')),
    /** The pumps that run. */
    running: listOf(reference(['circulator', 'recirculationPump'])),
    /** What it is for. */
    purpose: choice({
      heating: 'heating',
      'hot-water': 'hot water',
      both: 'heating and hot water together',
      idle: 'nothing',
    }),
    /** The zones that get heat. */
    zones: listOf(reference('zone')),
    /** Heat that is asked for; Btu/h, zero or more. */
    load: quantity('heatRate'),
    /** Supply temperature; degF, commonly 90 to 190. */
    supply: quantity('temperature'),
  },
})

/** A state is known by its name; it has no id. */
export interface StateWritten extends Omit<ItemWritten<typeof state>, 'id' | 'name'> {
  readonly name: string
  /** Whether water of a boiler runs through an emitter while the state holds: past no zone valve but those that it says stand open. */
  readonly heatsZones?: EntryWritten<'yes' | 'no'>
}
