import { pressurePart } from '../families.js'
import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { WrittenOf } from '../written.js'

/** A closed tank, made for drinking water, whose air charge takes up the swelling of heated potable water. */
export const potableExpansionTank = kind('potableExpansionTank', {
  spoken: 'potable expansion tank',
  place: 'hotWater',
  families: [pressurePart],
  ports: { system: 'potableCold' },
  fields: {
    ...pressurePart.fields,
    /** Whole volume of the tank; gallons, above zero. */
    volume: quantity('volume'),
    /** Pressure of its air charge; psi, commonly 40 to 80. */
    precharge: quantity('pressure'),
    /** Whether the charge was read with no water pressure on the tank; otherwise the gauge reads the system. */
    prechargeWaterSideEmpty: yesNo,
    /** Most water that it may take in; gallons, above zero and at most its volume. */
    acceptance: quantity('volume'),
    /** Water for which its maker lists it. */
    listedFor: choice({ heating: 'heating water', potable: 'drinking water' }),
    /** What carries its filled weight. */
    support: choice({ bracket: 'bracket or strap', floor: 'floor', pipe: 'the pipe it hangs on' }),
  },
})

/** A potable expansion tank as written: plain text values. */
export interface PotableExpansionTankWritten extends WrittenOf<typeof potableExpansionTank> {}
