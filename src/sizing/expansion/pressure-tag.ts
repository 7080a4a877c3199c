import { printQuantity, type UnitSystem } from '../../units/index.js'

/** What the gauge is expected to read at a temperature. */
export interface ExpectedReading {
  /** K, mean of the system. */
  readonly temperature: number
  /** Pa, gauge. */
  readonly pressure: number
}

interface TaggedSystem {
  readonly units: UnitSystem
  /** Pa, gauge, of the air charge. */
  readonly precharge: number
  /** Pa, gauge, at which the relief valve opens. */
  readonly relief: number
  readonly cold: ExpectedReading
  /** Warmest last. */
  readonly hot: readonly ExpectedReading[]
}

/**
 * Lines for a tag at the gauge, so that whoever comes later sees at a glance whether the tank still works.
 *
 * @example
 * pressureTag({ units: 'ip', precharge, relief, cold, hot })[1] // 'Cold, at 50 F: 16 psi.'
 */
export function pressureTag({ units, precharge, relief, cold, hot }: TaggedSystem): readonly string[] {
  const pressure = (value: number): string => printQuantity(value, 'pressure', units)
  const temperature = (value: number): string => printQuantity(value, 'temperature', units)
  return [
    `Air charge of the tank: ${pressure(precharge)}, set while no water presses on it.`,
    `Cold, at ${temperature(cold.temperature)}: ${pressure(cold.pressure)}.`,
    ...hot.map((reading) => `Hot, at ${temperature(reading.temperature)}: ${pressure(reading.pressure)}.`),
    `The relief valve opens at ${pressure(relief)}. A reading that climbs towards it means a tank without air.`,
  ]
}
