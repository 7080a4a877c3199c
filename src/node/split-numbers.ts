import type { Mistake } from './mistake.js'

/** A plain text between two commas inside braces or brackets. */
export interface Piece {
  readonly text: string
  readonly at: number
  readonly end: number
  /** Without a key of its own: an item of a list, or a key without a value. */
  readonly alone: boolean
}

/** A number such as `75,000` cut at its commas, from the first to the last piece. */
export interface SplitNumber {
  readonly mistake: Mistake
  readonly first: number
  readonly last: number
}

/**
 * Finds numbers that the comma cut in two without anybody noticing. In a list `[100,200]` are two numbers; `[75,000 Btu/h]`
 * is one, since no second number begins with 0 or carries the only unit.
 */
export function splitNumbers(
  pieces: readonly (Piece | undefined)[],
  text: string,
  inside: 'list' | 'map',
): readonly SplitNumber[] {
  const glued = pieces.map((piece, index) => isGlued(pieces[index - 1], piece, text))
  const starts = [...glued.keys()].filter((index) => glued[index] !== true && glued[index + 1] === true)
  return starts.flatMap((first) => {
    const last = lastGlued(glued, first)
    const parts = pieces.slice(first, last + 1).flatMap((piece) => piece ?? [])
    return inside === 'list' && parts.every(isNumber) ? [] : cut(parts, first, last)
  })
}

function isGlued(before: Piece | undefined, piece: Piece | undefined, text: string): boolean {
  if (before === undefined || piece === undefined || !piece.alone) return false
  return (
    text.slice(before.end, piece.at) === ',' && /(^|\D)\d{1,3}$/.test(before.text) && /^\d{3}(?!\d)/.test(piece.text)
  )
}

function lastGlued(glued: readonly boolean[], first: number): number {
  const end = glued.indexOf(false, first + 1)
  return end === -1 ? glued.length - 1 : end - 1
}

function isNumber(piece: Piece): boolean {
  return /^-?(0|[1-9]\d*)(\.\d+)?$/.test(piece.text)
}

function cut(parts: readonly Piece[], first: number, last: number): readonly SplitNumber[] {
  const whole = parts.map((part) => part.text).join(',')
  const message = `"${whole}" is cut at its comma here: quote it, or drop the comma.`
  return [
    {
      mistake: { code: 'comma-in-number', at: parts[0]?.at ?? 0, message, nearest: whole.replaceAll(',', '') },
      first,
      last,
    },
  ]
}
