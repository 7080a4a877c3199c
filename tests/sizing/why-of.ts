import type { Sizing } from '../../src/sizing/sizing.js'

/** Why a sizing came to no number; empty where it did. */
export function whyOf(sizing: Sizing): string {
  return sizing.sized ? '' : sizing.why
}
