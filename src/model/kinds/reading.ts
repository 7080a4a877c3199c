import { choice, quantity, reference, text, yesNo } from '../field.js'
import { kind } from '../kind.js'
import type { ItemWritten } from '../written.js'

/** A value read from an instrument while the system ran. */
export const reading = kind('reading', {
  spoken: 'reading',
  section: 'readings',
  place: 'papers',
  fields: {
    /** What was read, in words: flue carbon monoxide, supply temperature. */
    quantity: text,
    /** What the instrument showed, with its unit. */
    value: text,
    /** Day on which it was read; a date. */
    at: quantity('date'),
    /** Who read it. */
    by: text,
    /** The instrument, with its last calibration. */
    instrument: text,
    /** What ran, and how, while it was read. */
    condition: text,
    /** What the instrument was held into or on. */
    sample: choice({
      'flue-gas': 'flue gas',
      'gas-inlet': 'gas before the appliance',
      'heating-water': 'heating water',
      'hot-water': 'hot water at a tap',
      'intake-air': 'air in the intake pipe',
      'draft-hood': 'draft hood of a heater on a chimney',
      refractometer: 'heating water on a refractometer',
      other: 'something else',
    }),
    /** Firing rate at which it was read. */
    firing: choice({ high: 'high fire', middle: 'between', low: 'low fire' }),
    /** Oxygen in the dry flue gas; percent, 0 to 20.9. */
    oxygen: quantity('fraction'),
    /** Carbon dioxide in the dry flue gas; percent, 0 to about 15. */
    carbonDioxide: quantity('fraction'),
    /** Carbon monoxide in the dry flue gas, as the analyzer showed it; ppm, zero or more. */
    carbonMonoxide: quantity('concentration'),
    /** The component at which it was read. */
    component: reference(
      [
        'boiler',
        'waterHeater',
        'indirectTank',
        'builtInWaterHeater',
        'mixingValve',
        'circulator',
        'expansionTank',
        'neutralizer',
        'recirculationLoop',
        'gasMeter',
        'gasRegulator',
        'backflowDevice',
        'emitter',
        'transformer',
      ],
      { countedAs: 'readings' },
    ),
    /** Day on which the instrument was last calibrated; a date. */
    instrumentCalibratedOn: quantity('date'),
    /** Whether every other gas appliance ran at the same time. */
    othersRunning: yesNo,
    /** Temperature of the flue gas; degF, commonly 90 to 500. */
    flueTemperature: quantity('temperature'),
    /** Temperature of the water that leaves the boiler; degF, commonly 90 to 190. */
    supply: quantity('temperature'),
    /** Temperature of the water that comes back to the boiler; degF, commonly 70 to 170. */
    return: quantity('temperature'),
    /** Outdoor temperature; degF, commonly -20 to 100. */
    outdoor: quantity('temperature'),
    /** Temperature of water at a tap, in a tank or in a loop; degF, commonly 40 to 160. */
    waterTemperature: quantity('temperature'),
    /** Gas pressure at the inlet with nothing firing; inches of water column. */
    gasPressureStatic: quantity('pressure'),
    /** Gas pressure at the inlet while it fires; inches of water column. */
    gasPressureRunning: quantity('pressure'),
    /** Gas that the meter counted; cubic feet, above zero. */
    clockedVolume: quantity('volume'),
    /** How long it took; seconds, above zero. */
    clockedTime: quantity('time'),
    /** Pressure of the heating water; psi, commonly 5 to 30. */
    systemPressure: quantity('pressure'),
    /** Pressure in the vent connector, below zero where it draws; inches of water column. */
    draft: quantity('pressure'),
    /** What was seen at a draft hood after five minutes. */
    spillage: choice({ clear: 'nothing spills', spills: 'flue gas spills' }),
    /** Oxygen in the intake air; percent, 20.9 where no flue gas comes back. */
    intakeOxygen: quantity('fraction'),
    /** Carbon monoxide in the air of the room; ppm, zero or more. */
    roomCarbonMonoxide: quantity('concentration'),
    /** Acidity of water or condensate; pH, 0 to 14. */
    pH: quantity('number'),
    /** Hardness of the water; grains per gallon, commonly 0 to 30. */
    hardness: quantity('concentration'),
    /** Antifreeze by volume, as a refractometer showed it; percent, 0 to 60. */
    glycolStrength: quantity('fraction'),
    /** Scale on which the refractometer was read. */
    glycolScale: choice({ 'propylene-glycol': 'propylene glycol', 'ethylene-glycol': 'ethylene glycol' }),
    /** Flow of water; gpm, zero or more. */
    flow: quantity('volumeFlow'),
    /** Head across a pump or circuit; feet of the fluid, zero or more. */
    head: quantity('head'),
    /** Voltage; volts, commonly 24 or 120. */
    voltage: quantity('voltage'),
    /** Current; amperes, zero or more. */
    current: quantity('current'),
  },
})

/** A reading as written: plain text values. */
export interface ReadingWritten extends ItemWritten<typeof reading> {}
