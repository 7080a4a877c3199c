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
    /** How the heat exchanger is built; makers of coil and water-tube boilers may accept flow sensing. */
    construction: choice({
      'fire-tube': 'fire-tube',
      'water-tube': 'water-tube',
      coil: 'coil',
      'cast-iron-sections': 'cast-iron sections',
    }),
    /** What stops the burner when water runs short. */
    lowWaterProtection: choice({
      probe: 'low-water probe',
      float: 'low-water float',
      'flow-sensing': 'flow sensing',
      missing: 'nothing',
    }),
    /** How low-water protection comes back: by hand or by itself. */
    lowWaterReset: choice({ manual: 'manual reset', automatic: 'automatic reset' }),
    /** Whether the high limit was made to stop the burner at start-up. */
    highLimitProved: yesNo,
    /** How the outdoor reset of the boiler stands. */
    outdoorReset: choice({ enabled: 'enabled', disabled: 'switched off', missing: 'not there' }),
    /** Whether the maker asks for an inhibitor in the heating water. */
    inhibitorWanted: yesNo,
    /** Whether it has an electrical circuit of its own. */
    ownCircuit: yesNo,
    /** Whether a service switch stands in sight of it. */
    switchInSight: yesNo,
    /** Whether line and neutral are on their own terminals. */
    polarity: choice({ correct: 'correct', reversed: 'line and neutral reversed' }),
    /** What calls it: a contact without voltage of its own, or one that brings voltage. */
    controlContact: choice({ dry: 'dry contact', powered: 'contact with a voltage of its own' }),
    /** Distance along the pipe to its gas shutoff valve; feet, zero or more. */
    gasShutoffDistance: quantity('length'),
    /** Whether a sediment trap stands between the shutoff valve and the gas inlet. */
    gasSedimentTrap: yesNo,
    /** Whether a rigid gas connection has a union. */
    gasUnion: yesNo,
    /** Lowest gas inlet pressure that the maker allows while it fires; inches of water column. */
    minimumInletPressure: quantity('pressure'),
    /** Highest gas inlet pressure that the maker allows; inches of water column. */
    maximumInletPressure: quantity('pressure'),
    /** Gas inlet pressure with every appliance firing; inches of water column. */
    inletPressureAllOn: quantity('pressure'),
    /** Gas inlet pressure with nothing firing; inches of water column. */
    inletPressureStatic: quantity('pressure'),
    /** How it was made fit for its gas. */
    gasConversion: choice({
      factory: 'made for this gas',
      'kit-with-label': 'converted by kit, labelled',
      'kit-without-label': 'converted by kit, no label',
      missing: 'not converted',
    }),
    /** Least distance to what can burn that the maker asks for; inches, zero or more. */
    clearanceWanted: quantity('length'),
    /** Least distance to what can burn as it stands; inches, zero or more. */
    clearance: quantity('length'),
    /** Depth of free floor in front of it; inches, zero or more. */
    serviceDepth: quantity('length'),
    /** Whether the maker's manual was left at it. */
    manualLeft: yesNo,
    /** Whether a diagram of its controls was left at it. */
    controlDiagramLeft: yesNo,
  },
  parts: { ventTable: ventTableRow },
})

/** A boiler as written: plain text values. */
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
