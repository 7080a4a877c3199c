import { choice, quantity } from '../field.js'
import { kind } from '../kind.js'
import type { EntryWritten, WrittenOf } from '../written.js'

/** A regulator that lowers the pressure of gas. */
export const gasRegulator = kind('gasRegulator', {
  spoken: 'gas regulator',
  place: 'gas',
  ports: { in: 'gas', out: 'gas' },
  through: ['in', 'out'],
  ways: [{ between: ['in', 'out'], closes: 'never', restricts: true }],
  fields: {
    /** Where in the supply it works. */
    stage: choice({
      first: 'first stage, at a propane tank',
      second: 'second stage, at the house',
      line: 'line regulator',
    }),
    /** Pressure ahead of it; psi, commonly 2 to 10. */
    inletPressure: quantity('pressure'),
    /** Pressure behind it; inches of water column, commonly 7 to 11. */
    outletPressure: quantity('pressure'),
    /** Gas that it may pass at these pressures; cubic feet per hour, above zero. */
    capacity: quantity('gasFlow'),
    /** Where its vent opens. */
    vent: choice({
      outdoors: 'piped outdoors',
      limiter: 'vent limiter',
      'open-indoors': 'open indoors',
      plugged: 'plugged',
    }),
  },
})

/** A gas regulator as written: plain text values. */
export interface GasRegulatorWritten extends WrittenOf<typeof gasRegulator> {
  /** Whether every way from a gas meter to the regulator passes a gas shutoff valve. */
  readonly shutoffAhead?: EntryWritten<'yes' | 'no'>
  /** Whether an appliance takes gas ahead of the regulator, at the higher pressure. */
  readonly applianceAhead?: EntryWritten<'yes' | 'no'>
}
