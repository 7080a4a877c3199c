import { between, isSettled, type Answer } from './answer.js'

/** A traced or computed answer beside one that the document states: the trace goes first, the statement fills what it leaves open. */
export type Combined =
  { readonly agree: true; readonly answer: Answer } | { readonly agree: false; readonly answer: Answer }

/** Puts a trace and a statement together and tells whether they can both be true. */
export function combine(traced: Answer, stated: Answer): Combined {
  if (stated.state === 'unknown') return { agree: true, answer: traced }
  const spoken: Answer = { ...stated, stated: true }
  if (traced.state === 'unknown') return { agree: true, answer: spoken }
  if (traced.state === 'number' && stated.state === 'number') return combineBounds(traced, spoken)
  return { agree: sameWord(traced, stated), answer: traced }
}

/** What everything said adds to what is stated alone. Whatever it adds rests on an assumption. */
export function refine(strict: Answer, whole: Answer): Answer {
  if (strict.state === 'unknown') return whole.state === 'unknown' ? strict : { ...whole, assumed: true }
  if (strict.state !== 'number' || whole.state !== 'number') return strict
  const low = Math.max(strict.low, whole.low)
  const high = Math.min(strict.high, whole.high)
  const adds = low <= high && (low > strict.low || high < strict.high)
  return adds ? between(low, high, { ...strict, assumed: true, missing: low === high ? [] : strict.missing }) : strict
}

function combineBounds(traced: Answer & { state: 'number' }, spoken: Answer): Combined {
  if (spoken.state !== 'number') return { agree: true, answer: traced }
  const low = Math.max(traced.low, spoken.low)
  const high = Math.min(traced.high, spoken.high)
  const slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high))
  if (low > high + slack) return { agree: false, answer: traced }
  if (isSettled(traced)) return { agree: true, answer: traced }
  const ends = low > high ? { low: high, high: low } : { low, high }
  return {
    agree: true,
    answer: between(ends.low, ends.high, { ...traced, stated: true, assumed: traced.assumed || spoken.assumed }),
  }
}

function sameWord(a: Answer, b: Answer): boolean {
  return a.state === 'word' && b.state === 'word' && a.word === b.word
}
