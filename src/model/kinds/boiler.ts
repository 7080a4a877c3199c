import { fuelBurner, gasAppliance, ventedAppliance, waterVessel } from '../families.js'
import { choice, group, listOf, quantity, reference, text, yesNo } from '../field.js'
import { kind } from '../kind.js'
import { ventMaterial } from '../vent-material.js'
import type { EntryWritten, LongEntry, WrittenOf } from '../written.js'
import { altitudeRow } from './altitude-row.js'
import { efficiencyPoint } from './efficiency-point.js'
import { ventTableRow } from './vent-table-row.js'

/** A fuel-fired hot water boiler with its three water tappings. Its pressure limit is `mawp`. */
export const boiler = kind('boiler', {
  spoken: 'boiler',
  place: 'boiler',
  families: [fuelBurner, ventedAppliance, gasAppliance, waterVessel],
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
    ...gasAppliance.fields,
    ...waterVessel.fields,
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
    /** Highest water flow that the maker allows; gpm, above zero. */
    maximumFlow: quantity('volumeFlow'),
    /** Greatest rise from return to supply that the maker allows; degF, commonly 30 to 60. */
    maximumRise: quantity('temperatureDifference'),
    /** Hottest water that it can be set to send out; degF, commonly 180 to 210. */
    maximumSupply: quantity('temperature'),
    /** Water it holds; gallons, above zero. */
    waterVolume: quantity('volume'),
    /** How it holds back the water: one point, from which the head grows with the square of the flow. */
    resistance: group({
      /** Flow of a point that the maker states; gpm, above zero. */
      flow: quantity('volumeFlow'),
      /** Head lost in the boiler at that flow; feet of the fluid, above zero. */
      head: quantity('head'),
    }),
    /** Whether it holds little water and metal or much. */
    massClass: choice({ 'low-mass': 'low mass', 'high-mass': 'high mass' }),
    /** What its heat exchanger is made of. */
    heatExchangerMaterial: choice({
      stainless: 'stainless steel',
      aluminum: 'aluminum',
      'cast-iron': 'cast iron',
      copper: 'copper',
      steel: 'steel',
    }),
    /** Fluids that the manual accepts in it. */
    acceptedFluids: listOf(
      choice({
        'plain-water': 'plain water',
        'propylene-glycol': 'propylene glycol',
        'ethylene-glycol': 'ethylene glycol',
      }),
    ),
    /** Lowest pH of the water that the manual accepts; a number, commonly 6.5 to 8.2. */
    lowestPH: quantity('number'),
    /** Highest pH of the water that the manual accepts; a number, commonly 8.5 to 10. */
    highestPH: quantity('number'),
    /** Hardest water that the manual accepts; grains per gallon, commonly 5 to 12. */
    highestHardness: quantity('concentration'),
    /** Its vent category, by vent pressure and condensing. */
    ventCategory: choice({
      'category-I': 'category I',
      'category-II': 'category II',
      'category-III': 'category III',
      'category-IV': 'category IV',
    }),
    /** Materials of the air intake pipe that the manual accepts. */
    acceptedIntake: listOf(ventMaterial),
    /** Highest flue gas temperature to which the manual accepts plastic vent pipe; degF, commonly 149 to 194. */
    plasticVentLimit: quantity('temperature'),
    /** The chimney flue that it vents into. */
    chimney: reference('chimneyFlue', { countedAs: 'boilers' }),
    /** Size of its tapping for the relief valve; nominal inches, commonly 3/4 to 2. */
    reliefTapping: quantity('nominalSize'),
    /** Whether it has a control that stops the burner at its working temperature. */
    operatingControl: yesNo,
    /** How many high limits it has beside that control; a whole number, commonly 1 or 2. */
    highLimits: quantity('count'),
    /** How its high limits come back: by hand or by themselves. */
    highLimitReset: choice({ manual: 'manual reset', automatic: 'automatic reset', both: 'one of each' }),
    /** Whether a built-in switch stops the burner at low water pressure. */
    pressureSwitchBuiltIn: yesNo,
    /** Listing of what stops the burner when water runs short. */
    lowWaterListing: choice({
      listed: 'listed as a low-water cutoff',
      'listed-with-boiler': 'listed as part of the boiler',
      'not-listed': 'not listed',
    }),
    /** What the manual says on low-water protection. */
    lowWaterManual: choice({
      'flow-sensing-accepted': 'flow sensing is enough',
      'cutoff-demanded': 'a low-water cutoff is demanded',
      silent: 'it says nothing',
    }),
    /** How its low-water protection can be tested. */
    lowWaterTest: choice({
      'test-button': 'a test button',
      'drain-down': 'only by draining',
      'not-testable': 'nothing',
    }),
    /** Whether it has a pressure gauge of its own. */
    gaugeBuiltIn: yesNo,
    /** Whether it shows the temperature of its water. */
    thermometerBuiltIn: yesNo,
    /** Whether a pump is built in. */
    pumpBuiltIn: yesNo,
    /** Whether a condensate trap is built in. */
    trapBuiltIn: yesNo,
    /** Whether the built-in trap was filled with water before the first firing. */
    trapFilled: yesNo,
    /** Most condensate that it makes; gallons per hour, commonly 0.5 to 2. */
    condensateRate: quantity('volumeFlow'),
    /** Whether it was set up for the altitude of the site as the manual says. */
    altitudeSet: yesNo,
    /** Highest input at the altitude of the site, from the manual; Btu/h, above zero. */
    inputAtAltitude: quantity('heatRate'),
    /** Greatest height above sea level that the manual allows; feet, commonly 2,000 to 10,000. */
    highestAltitude: quantity('length'),
    /** Whether it bears the mark of a testing laboratory for this use. */
    listed: yesNo,
    /** Serial number, from the nameplate. */
    serial: text,
    /** Voltage of its supply; volts, commonly 120 or 240. */
    ratedVoltage: quantity('voltage'),
    /** Current that it draws; amperes, commonly 1 to 12. */
    ratedCurrent: quantity('current'),
    /** Rating of the breaker ahead of it; amperes, commonly 15. */
    circuitBreaker: quantity('current'),
    /** What decided its size, as stated in writing. */
    sizedFor: choice({ heating: 'the heating load', 'hot-water': 'hot water', 'future-load': 'a load to come' }),
    /** Whether the record of the start-up was left at it. */
    startUpRecordLeft: yesNo,
    /** Whether a tag with fill pressure, air charge and fluid was left at it. */
    settingsTagLeft: yesNo,
  },
  parts: { ventTable: ventTableRow, efficiencyCurve: efficiencyPoint, altitudeTable: altitudeRow },
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
  /** Whether drinking water reaches the heating water of the boiler anywhere with all backflow devices taken out. Walls of heat exchangers are no way. */
  readonly drinkingWaterJoined?: EntryWritten<'yes' | 'no'>
  /** Whether a pressure gauge shows the boiler's own pressure with everything shut that can be. */
  readonly gaugeInVolume?: EntryWritten<'yes' | 'no'>
  /** Whether a dirt separator stands on every way from kept cast-iron emitters back to the boiler. */
  readonly dirtSeparated?: EntryWritten<'yes' | 'no'>
  /** Whether condensate of the boiler comes to a trap before anything else, be it a trap built into the boiler. */
  readonly trapFirst?: EntryWritten<'yes' | 'no'>
  /** Whether nothing else drains into the condensate of the boiler before it is neutralized: no relief valve, no softener, no cooling coil. Condensate of another appliance may. */
  readonly condensateAlone?: EntryWritten<'yes' | 'no'>
  /** Where the sediment trap stands on the gas pipe of the boiler alone: `behind-shutoff`, seen from the meter, `ahead-of-shutoff`, or `missing`. */
  readonly gasTrapPlace?: EntryWritten<'behind-shutoff' | 'ahead-of-shutoff' | 'missing'>
  /** Where the union stands on the gas pipe of the boiler alone: `behind-shutoff`, seen from the meter, `ahead-of-shutoff`, or `missing`. */
  readonly gasUnionPlace?: EntryWritten<'behind-shutoff' | 'ahead-of-shutoff' | 'missing'>
  /** Whether warm water can rise from the boiler through an emitter and back while every pump rests: past no check and no zone valve that is shut without power. */
  readonly flowsAtRest?: EntryWritten<'yes' | 'no'>
}
