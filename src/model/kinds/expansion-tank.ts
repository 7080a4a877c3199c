import { pressurePart } from '../families.js'
import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { EntryWritten, WrittenOf } from '../written.js'

/** A closed tank whose air charge takes up the swelling of the heating water. */
export const expansionTank = kind('expansionTank', {
  spoken: 'expansion tank',
  place: 'expansion',
  families: [pressurePart],
  ports: { system: 'heatingWater' },
  fields: {
    ...pressurePart.fields,
    /** Whole volume of the tank; gallons, above zero. */
    volume: quantity('volume'),
    /** Pressure of its air charge; psi, commonly 12 to 30. */
    precharge: quantity('pressure'),
    /** Whether the charge was read with no water pressure on the tank; otherwise the gauge reads the system. */
    prechargeWaterSideEmpty: yesNo,
    /** How it keeps air and water apart. */
    type: choice({ diaphragm: 'diaphragm or bladder', 'air-cushion': 'air cushion on the water' }),
    /** What carries its filled weight. */
    support: choice({ bracket: 'bracket or strap', floor: 'floor', pipe: 'the pipe it hangs on' }),
    /** Most water that it may take in; gallons, above zero and at most its volume. */
    acceptance: quantity('volume'),
    /** Water for which its maker lists it. */
    listedFor: choice({ heating: 'heating water', potable: 'drinking water' }),
    /** Weight without water; pounds, above zero. */
    emptyWeight: quantity('mass'),
    /** Whether its water side can be emptied in place, to read the air charge. */
    drainable: yesNo,
  },
})

/** An expansion tank as written: plain text values. */
export interface ExpansionTankWritten extends WrittenOf<typeof expansionTank> {
  /** Whether something between the expansion tank and the pipe that water runs through can be shut; `absent` when the tank hangs on no such pipe. */
  readonly tankWay?: EntryWritten<'open' | 'closable' | 'absent'>
  /** How the pumps stand to the place where the expansion tank joins: the first with the flow pumps `away` from it, one that is met against the flow pumps `towards` it; `neither` where none is met before the emitters. */
  readonly pumpOrder?: EntryWritten<'away' | 'towards' | 'neither'>
  /** Whether every other expansion tank of the same water joins it at the same place, with nothing but fittings and valves between. */
  readonly soleConnection?: EntryWritten<'yes' | 'no'>
  /** Whether an automatic air vent stands in the water that the expansion tank serves. */
  readonly automaticVents?: EntryWritten<'yes' | 'no'>
}
