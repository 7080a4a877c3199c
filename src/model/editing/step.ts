import type { Problem } from '../problem.js'
import { nearestIn } from '../reading/index.js'
import type { PlainMap } from './plain.js'

/** Why one edit cannot be made; the pointer is added by whoever knows its place in the list of edits. */
export type Refusal = Omit<Problem, 'pointer'>

export type Refused = { readonly ok: false; readonly refusal: Refusal }
export type Step = { readonly ok: true; readonly document: PlainMap } | Refused

export function done(document: PlainMap): Step {
  return { ok: true, document }
}

export function refuse(
  code: string,
  message: string,
  details: Partial<Omit<Refusal, 'code' | 'message'>> = {},
): Refused {
  return { ok: false, refusal: { code, message, ...details } }
}

/** Refuses a name that nobody knows, with the nearest that somebody does. */
export function refuseName(code: string, message: string, received: string, known: readonly string[]): Refused {
  return refuse(code, message, { received, ...nearestIn(received, known) })
}
