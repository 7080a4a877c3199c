import type { Sized, Step } from './sized.js'

interface Draw {
  readonly id: string
  /** VA */
  readonly power: number
}

interface EnergizedState {
  readonly name: string
  /** Ids of switched devices that draw power together. */
  readonly energized: readonly string[]
}

interface TransformerDevices {
  /** Devices that always draw power. */
  readonly steady: readonly Draw[]
  /** Devices that draw power only in states that energize them. */
  readonly switched: readonly Draw[]
  readonly states: readonly EnergizedState[]
}

/**
 * Most power that a transformer delivers at once: all steady devices, and the switched ones of the state that draws most.
 * Without states only the steady devices count.
 *
 * @returns VA
 *
 * @example
 * transformerLoad({
 *   steady: [{ id: 'CP1', power: 3 }],
 *   switched: [{ id: 'ZV1', power: 7.68 }],
 *   states: [{ name: 'heating', energized: ['ZV1'] }],
 * }).value // 10.68
 */
export function transformerLoad({ steady, switched, states }: TransformerDevices): Sized {
  const drawn = states.map((state) => ({ state, devices: switched.filter(({ id }) => state.energized.includes(id)) }))
  const heaviest = drawn.reduce<Heaviest>(
    (most, { state, devices }) => (sum(devices) > sum(most.devices) ? { name: state.name, devices } : most),
    { name: states[0]?.name ?? 'no state', devices: drawn[0]?.devices ?? [] },
  )
  const value = sum(steady) + sum(heaviest.devices)
  return {
    value,
    working: [
      ...steady.map(asStep),
      ...heaviest.devices.map(asStep),
      { name: `together in ${heaviest.name}`, value: sum(heaviest.devices), unit: 'VA' },
      { name: 'load', value, unit: 'VA' },
    ],
    assumed: [],
    valid: [...steady, ...switched].every(({ power }) => power >= 0),
  }
}

interface Heaviest {
  readonly name: string
  readonly devices: readonly Draw[]
}

function sum(draws: readonly Draw[]): number {
  return draws.reduce((total, { power }) => total + power, 0)
}

function asStep({ id, power }: Draw): Step {
  return { name: id, value: power, unit: 'VA' }
}
