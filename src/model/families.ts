import { listOf, quantity } from './field.js'
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
  },
})

/** A piece that only joins pipe. */
export const fitting = family('fitting', { spoken: 'fitting', fields: {} })
