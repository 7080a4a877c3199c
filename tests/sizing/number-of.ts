import type { Sizing } from '../../src/sizing/sizing.js'

/** The number of a sizing that must have one. */
export function numberOf(sizing: Sizing): number {
  if (!sizing.sized) throw new Error(sizing.why)
  return sizing.value
}
