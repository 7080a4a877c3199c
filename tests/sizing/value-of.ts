import type { Sizing } from '../../src/sizing/sizing.js'

/** The number of a sizing that must have come to one. */
export function valueOf(sizing: Sizing): number {
  if (!sizing.sized) throw new Error(sizing.why)
  return sizing.value
}

/** Why a sizing came to no number; empty where it did. */
export function whyOf(sizing: Sizing): string {
  return sizing.sized ? '' : sizing.why
}
