import { choice, listOf, quantity, yesNo } from './field.js'
import { family } from './kind.js'
import { fuelType } from './singletons/fuel.js'
import { ventMaterial } from './vent-material.js'

/** Anything that holds heating or potable water under pressure and carries a maker's limit. */
export const pressurePart = family('pressurePart', {
  spoken: 'part under pressure',
  fields: {
    /** Highest pressure its maker allows; psi, commonly 30 to 300. */
    maximumPressure: quantity('pressure'),
  },
})

/** A valve that a person can shut. */
export const closable = family('closable', { spoken: 'valve that can be shut', fields: {} })

/** Anything that gives the water's heat to a room. */
export const emitter = family('emitter', {
  spoken: 'heat emitter',
  fields: {
    /** Height of its highest water-filled point above the boiler gauge; feet; 0 ft for one that hangs lower, which asks for no pressure. */
    topElevation: quantity('length'),
    /** Water it holds; gallons, above zero. */
    waterVolume: quantity('volume'),
    /** Heat that it gives at the rating; Btu/h, above zero. Fin-tube and cast-iron radiators may be given by their length or EDR instead. */
    ratedOutput: quantity('heatRate'),
    /** How much warmer than the air the mean of the water is at the rating; degF, commonly 90 to 150. */
    ratedDifference: quantity('temperatureDifference'),
    /** Power by which its output follows that difference; a number, 1 with a fan, commonly 1.2 to 1.5 without. */
    exponent: quantity('number'),
    /** Part of the output that reaches the room past covers and cabinets; percent, 100 in the open. */
    coverFactor: quantity('fraction'),
    /** Heat that it has to give at the outdoor design temperature, its part of the room; Btu/h, zero or more. */
    roomLoad: quantity('heatRate'),
    /** Whether an air vent sits on it. */
    ventBuiltIn: yesNo,
  },
})

/** A valve in heating pipe whose resistance its maker states. */
export const heatingValve = family('heatingValve', {
  spoken: 'heating valve',
  fields: {
    /** Flow coefficient, as it stands open or is set; Cv, commonly 0.5 to 30. */
    flowCoefficient: quantity('flowCoefficient'),
  },
})

/** An appliance that burns fuel. */
export const fuelBurner = family('fuelBurner', {
  spoken: 'fuel-burning appliance',
  fields: {
    /** Fuel for which the burner is set up now, conversion kit included. */
    fuel: fuelType,
    /** Highest rate at which it burns fuel, from the nameplate; Btu/h, above zero. */
    input: quantity('heatRate'),
  },
})

/** An appliance that is joined to gas pipe. */
export const gasAppliance = family('gasAppliance', {
  spoken: 'gas appliance',
  fields: {
    /** Distance along the pipe to its gas shutoff valve; feet, zero or more. */
    gasShutoffDistance: quantity('length'),
    /** Whether a person can reach its gas shutoff valve without tools. */
    gasShutoffAccessible: yesNo,
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
  },
})

/** An appliance or tank full of water that could fall over or leak. */
export const waterVessel = family('waterVessel', {
  spoken: 'appliance or tank that holds water',
  fields: {
    /** How many straps hold it against earthquakes; a whole number, 0 where it has none. */
    straps: quantity('count'),
    /** The pan below it. */
    pan: choice({
      'with-drain': 'pan with a drain',
      'without-drain': 'pan without a drain',
      missing: 'no pan',
    }),
    /** Whether it stands above rooms that a leak would spoil. */
    aboveFinishedSpace: yesNo,
  },
})

/** Where hot water comes from. */
export const hotWaterSource = family('hotWaterSource', {
  spoken: 'source of hot water',
  fields: {
    /** Temperature at which it keeps the water, or gives it where it keeps none; degF, commonly 110 to 140. */
    storedTemperature: quantity('temperature'),
  },
})

/** A device that keeps heating water out of the drinking water. */
export const backflowDevice = family('backflowDevice', {
  spoken: 'backflow device',
  fields: {
    /** What it feeds. */
    service: choice({ 'heating-fill': 'fill of the heating system', other: 'other use' }),
    /** Kind of device, by the standard on its tag. */
    class: choice({
      'air-gap': 'air gap',
      vented: 'intermediate vent (ASSE 1012)',
      'vented-with-fill': 'intermediate vent and fill valve in one body (ASSE 1081)',
      'dual-check': 'dual check without vent (ASSE 1024)',
      'double-check': 'double check (ASSE 1015)',
      'reduced-pressure': 'reduced pressure (ASSE 1013)',
      'vacuum-breaker': 'vacuum breaker',
    }),
    /** Whether its vent or relief port drains through an air gap. */
    ventAirGap: yesNo,
    /** How the pipe from its vent port ends. */
    ventEnd: choice({ open: 'in the open', 'closed-pipe': 'in a closed pipe', submerged: 'under water' }),
    /** Height of its lowest part above the floor; inches, zero or more. */
    heightAboveFloor: quantity('length'),
    /** Whether a drain near it takes all that its relief port can let go. */
    drainNearby: yesNo,
    /** Whether electrical equipment stands below it. */
    overElectrical: yesNo,
    /** Whether a certified tester has tested it since it was put in, at most a year ago. */
    testCurrent: yesNo,
    /** Day of the last test by a certified tester; a date. */
    testedOn: quantity('date'),
  },
})

/** A device that fills the heating system to a pressure. */
export const fillDevice = family('fillDevice', {
  spoken: 'fill device',
  fields: {
    /** Pressure to which it fills; psi, commonly 12 to 30. */
    setPressure: quantity('pressure'),
    /** How the fill line is left in service. */
    position: choice({ open: 'left open', closed: 'closed after filling' }),
  },
})

/** An appliance whose maker names the vent pipe that it may exhaust into. */
export const ventedAppliance = family('ventedAppliance', {
  spoken: 'vented appliance',
  fields: {
    /** Exhaust materials that the installation manual accepts. */
    acceptedExhaust: listOf(ventMaterial),
    /** Highest flue gas temperature that a built-in limit allows; degF, commonly 140 to 250. */
    flueLimit: quantity('temperature'),
  },
})

/** A device that draws control power from a transformer. */
export const poweredDevice = family('poweredDevice', {
  spoken: 'control device',
  fields: {
    /** Power it draws while energized; VA, commonly 1 to 20. */
    power: quantity('apparentPower'),
    /** Voltage at which it works; volts, commonly 24. */
    voltage: quantity('voltage'),
    /** Length of the wire to it, one way; feet, zero or more. */
    wireLength: quantity('length'),
    /** Gauge of that wire; an AWG number, commonly 14 to 20. */
    wireGauge: quantity('count'),
  },
})

/** A piece that only joins pipe. */
export const fitting = family('fitting', { spoken: 'fitting', fields: {} })
