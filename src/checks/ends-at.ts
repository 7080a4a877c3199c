import type { TurningPoint } from '../facts/index.js'

/** A way that goes wrong where it ends, and why. */
export function endsAt(
  witness: readonly string[],
  because: string,
): { readonly witness: readonly string[]; readonly turningPoint?: TurningPoint } {
  const at = witness.at(-1)
  return at === undefined ? { witness } : { witness, turningPoint: { at, because } }
}
