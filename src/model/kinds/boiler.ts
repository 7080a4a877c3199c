import { fuelBurner, ventedAppliance } from '../families.js'
import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { EntryWritten, LongEntry, WrittenOf } from '../written.js'
import { ventTableRow } from './vent-table-row.js'

/** A fuel-fired hot water boiler with its three water tappings. Its pressure limit is `mawp`. */
export const boiler = kind('boiler', {
  spoken: 'boiler',
  place: 'boiler',
  families: [fuelBurner, ventedAppliance],
  ports: {
    supply: 'heatingWater',
    return: 'heatingWater',
    relief: 'heatingWater',
    gas: 'gas',
    flue: 'flueGas',
    intake: 'combustionAir',
    condensate: 'condensate',
  },
  through: ['return', 'supply'],
  ways: [
    { between: ['return', 'supply'], closes: 'never' },
    { between: ['supply', 'relief'], closes: 'never' },
    { between: ['return', 'relief'], closes: 'never' },
  ],
  fields: {
    ...fuelBurner.fields,
    ...ventedAppliance.fields,
    /** Maximum allowable working pressure on the nameplate; psi, commonly 30 to 160. */
    mawp: quantity('pressure'),
    /** Highest heat output, from the nameplate; Btu/h, above zero and below the input. */
    output: quantity('heatRate'),
    /** Lowest steady heat output; Btu/h, equal to the output where the burner does not modulate. */
    minimumOutput: quantity('heatRate'),
    /** Lowest water flow that the maker allows while the burner runs; gpm, zero where the maker asks for none. */
    minimumFlow: quantity('volumeFlow'),
    /** Whether it is made to condense its flue gas. */
    condensing: yesNo,
    /** Whether all combustion air comes from outdoors through a piped intake. */
    sealedCombustion: yesNo,
    /** What it heats. */
    serves: choice({ heating: 'heating only', 'heating-and-hot-water': 'heating and hot water' }),
  },
  parts: { ventTable: ventTableRow },
})

export interface BoilerWritten extends WrittenOf<typeof boiler> {
  /** Whether a relief valve stays joined to the boiler with everything shut that can be. */
  readonly reliefInVolume?: EntryWritten<'yes' | 'no'>
  /** Whether the way from the boiler to its relief valve is free of anything that closes, checks, strains or reduces; `absent` when no way leads to one. */
  readonly reliefWay?: EntryWritten<'open' | 'blocked' | 'absent'>
  /** Whether a relief valve stands directly on the boiler or its tapping. */
  readonly reliefOnBoiler?: EntryWritten<'yes' | 'no'>
  /** Lowest pressure limit of all other parts in the boiler's volume; psi, `within` is required. */
  readonly weakestPart?: LongEntry<string>
  /** Whether all its condensate passes a neutralizer. */
  readonly condensateTreated?: EntryWritten<'yes' | 'no'>
  /** Whether untreated condensate reaches a drain that acid attacks. */
  readonly acidReachesMetalDrain?: EntryWritten<'yes' | 'no'>
  /** Whether pipe that acid attacks stands ahead of the neutralizer. */
  readonly metalAheadOfNeutralizer?: EntryWritten<'yes' | 'no'>
}
