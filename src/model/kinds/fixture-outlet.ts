import { reference } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** The end of hot water pipe at a fixture. */
export const fixtureOutlet = kind('fixtureOutlet', {
  spoken: 'fixture outlet',
  place: 'hotWater',
  ports: { hot: 'potableHot' },
  fields: {
    /** The fixture that takes its water there. */
    fixture: reference('fixture', { countedAs: 'outlets' }),
  },
})

/** A fixture outlet as written: plain text values. */
export interface FixtureOutletWritten extends WrittenOf<typeof fixtureOutlet> {}
