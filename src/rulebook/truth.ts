import type { Tri } from '../network/index.js'

export type { Tri }

/** Kleene's three values: -1 is no, 0 cannot be told, 1 is yes. */
export const both = (values: readonly Tri[]): Tri =>
  values.reduce<Tri>((least, value) => (value < least ? value : least), 1)
export const either = (values: readonly Tri[]): Tri =>
  values.reduce<Tri>((most, value) => (value > most ? value : most), -1)
export const opposite = (value: Tri): Tri => (value === 1 ? -1 : value === -1 ? 1 : 0)
