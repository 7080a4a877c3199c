import { between, boundsOf, known, unknown, type Answer, type Missing } from './answer.js'

/** What several answers have in common when they are put together: all that is missing, and whether anything was assumed. */
export function trailOf(answers: readonly Answer[]): {
  readonly missing: readonly Missing[]
  readonly assumed: boolean
  readonly stated: boolean
} {
  return {
    missing: answers.flatMap((answer) => answer.missing),
    assumed: answers.some((answer) => answer.assumed),
    stated: answers.some((answer) => answer.stated),
  }
}

/** The sum of numeric answers, bounded where one of them is. The sum of none is zero. */
export function sumOf(answers: readonly Answer[]): Answer {
  return put(answers, (bounds) => bounds.reduce((sum, one) => sum + one, 0))
}

/** The largest of numeric answers: never below the largest that is known. */
export function largestOf(answers: readonly Answer[]): Answer {
  return put(answers, (bounds) => Math.max(...bounds))
}

/** The smallest of numeric answers: never above the smallest that is known. */
export function smallestOf(answers: readonly Answer[]): Answer {
  return put(answers, (bounds) => Math.min(...bounds))
}

/** A numeric answer times a factor. */
export function timesOf(factor: number, answer: Answer): Answer {
  const { low, high } = boundsOf(answer)
  const ends = [low * factor, high * factor]
  return rebound([answer], Math.min(...ends), Math.max(...ends))
}

/** Bounds of an amount that cannot be negative: unknown is anything from zero up. */
export function atLeastZero(answer: Answer): { readonly low: number; readonly high: number } {
  const { low, high } = boundsOf(answer)
  return { low: Math.max(0, low), high }
}

/** An answer made from others with bounds of its own: known when they meet. */
export function rebound(from: readonly Answer[], low: number, high: number): Answer {
  const trail = trailOf(from)
  if (Number.isNaN(low) || Number.isNaN(high)) return unknown(trail)
  return low === high && Number.isFinite(low) ? known(low, { ...trail, missing: [] }) : between(low, high, trail)
}

function put(answers: readonly Answer[], combine: (ends: readonly number[]) => number): Answer {
  const bounds = answers.map(boundsOf)
  return rebound(answers, combine(bounds.map(({ low }) => low)), combine(bounds.map(({ high }) => high)))
}
