import { hotWaterSource, pressurePart, waterVessel } from '../families.js'
import { choice, quantity, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { EntryWritten, WrittenOf } from '../written.js'

/** A hot water tank that the boiler heats through a coil. Its `maximumPressure` is that of the coil side. */
export const indirectTank = kind('indirectTank', {
  spoken: 'indirect tank',
  place: 'hotWater',
  families: [pressurePart, waterVessel, hotWaterSource],
  ports: {
    coilIn: 'heatingWater',
    coilOut: 'heatingWater',
    cold: 'potableCold',
    hot: 'potableHot',
    relief: 'potableHot',
  },
  through: ['coilIn', 'coilOut'],
  ways: [
    { between: ['coilIn', 'coilOut'], closes: 'never' },
    { between: ['cold', 'hot'], closes: 'never' },
    { between: ['cold', 'relief'], closes: 'never' },
    { between: ['hot', 'relief'], closes: 'never' },
  ],
  fields: {
    ...pressurePart.fields,
    ...waterVessel.fields,
    ...hotWaterSource.fields,
    /** Potable water it holds; gallons, above zero. */
    volume: quantity('volume'),
    /** Whether its hot water circulates through the house and back. */
    recirculated: yesNo,
    /** Walls between heating fluid and drinking water in its coil. */
    coilWall: choice({ single: 'single wall', double: 'double wall with a leak path' }),
    /** Heat that its coil takes at the rated flow; Btu/h, above zero. */
    coilRating: quantity('heatRate'),
    /** Rated flow through its coil; gpm, above zero. */
    coilFlow: quantity('volumeFlow'),
    /** Head lost in the coil at that flow; feet of the fluid, above zero. */
    coilHead: quantity('head'),
    /** Boiler water that enters its coil at that rating; degF, commonly 180. */
    coilRatedEntering: quantity('temperature'),
    /** Water of the tank at that rating; degF, commonly 90 to 120. */
    coilRatedTank: quantity('temperature'),
    /** Surface of its coil; square feet, above zero. */
    coilArea: quantity('area'),
    /** Heating water that its coil holds; gallons, above zero. */
    coilVolume: quantity('volume'),
    /** Whether a leak of its coil comes out where it is seen. */
    leakPath: yesNo,
    /** Heat that it loses while nothing is drawn; Btu/h, above zero. */
    standbyLoss: quantity('heatRate'),
    /** What the drinking water touches. */
    material: choice({
      stainless: 'stainless steel',
      'glass-lined': 'glass-lined steel',
      'copper-lined': 'copper-lined steel',
      'stone-lined': 'stone-lined steel',
    }),
    /** Part of the volume that it gives before it turns cool; percent, commonly 70 to 80. */
    usableFraction: quantity('fraction'),
    /** Highest pressure that its maker allows on the drinking-water side; psi, commonly 100 to 150. */
    potableMaximumPressure: quantity('pressure'),
    /** How copper pipe is joined to its steel. */
    nipples: choice({
      dielectric: 'dielectric fittings',
      brass: 'brass',
      'plastic-lined': 'plastic-lined steel',
      'steel-to-copper': 'steel straight to copper',
    }),
  },
})

/** An indirect tank as written: plain text values. */
export interface IndirectTankWritten extends WrittenOf<typeof indirectTank> {
  /** Whether a check valve or a meter keeps heated water from swelling back into the main. */
  readonly coldSideClosed?: EntryWritten<'yes' | 'no'>
  /** Whether the tank reaches a potable expansion tank, and whether a valve between them can be shut. */
  readonly potableExpansion?: EntryWritten<'reachable' | 'closable' | 'absent'>
  /** Where the T&P valve of the tank stands: `in-tapping` with nothing but fittings between, `free` of anything that closes but farther off, `blocked`, or `absent`. */
  readonly temperatureRelief?: EntryWritten<'in-tapping' | 'free' | 'blocked' | 'absent'>
}
