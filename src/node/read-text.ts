import type { Problem } from '../model/index.js'
import { composeText } from './compose-text.js'
import { foreignCharacter } from './foreign-character.js'
import { linePositions } from './line-positions.js'
import { locatedBy, type Located } from './locate.js'
import { problemsOf, type Mistake } from './mistake.js'
import { plainData, type PlainData } from './plain-data.js'

/** The largest text that is read, in characters. */
export const largestText = 50_000_000
// One text over many lines is one word, and still costs by the line.
const mostLines = 2_000_000

/** A text as plain data that knows where everything stands, or everything that is wrong with its notation. */
export type ReadText =
  | ({ readonly ok: true; readonly value: PlainData } & Located)
  | { readonly ok: false; readonly problems: readonly Problem[] }

/**
 * Reads YAML 1.2 or JSON with every scalar kept as the text that was written, so `301.10`, `yes` and `012` stay what they
 * are and each field decides what it takes. Refused, each with file, line and column: texts that are not YAML, keys that
 * are written twice, that are no text, that begin with a digit or stand without a value, empty values and `null` (write
 * `unknown`), anchors, references, merge keys, tags, directives, a second document, nesting deeper than 64, more than
 * 50 million characters, two million words or two million lines, and the keys `__proto__`, `constructor` and `prototype`.
 *
 * @param file - The name that problems carry.
 * @example
 * const read = readText('clause: 301.10', 'rule.yaml')
 * if (read.ok) console.log(read.value, read.locate('/clause')) // { clause: '301.10' } { line: 1, column: 9 }
 */
export function readText(text: string, file: string): ReadText {
  if (text.length > largestText) return { ok: false, problems: [tooLarge(`${largestText} characters`, file)] }
  const plain = text.startsWith('\uFEFF') ? text.slice(1) : text
  const positionOf = linePositions(plain)
  if (positionOf(plain.length).line > mostLines) return { ok: false, problems: [tooLarge(`${mostLines} lines`, file)] }
  const foreign = foreignCharacter(plain)
  if (foreign !== undefined) return { ok: false, problems: problemsOf([foreign], file, positionOf) }
  const composed = composeText(plain, positionOf)
  const found: Mistake[] = []
  const read =
    composed.root === undefined ? undefined : plainData(composed.root, '', { text: plain, positionOf, found })
  const mistakes = [
    ...composed.refused,
    ...composed.broken,
    ...found.filter((mistake) => !composed.isDoubtful(mistake)),
  ]
  if (read === undefined || mistakes.length > 0) return { ok: false, problems: problemsOf(mistakes, file, positionOf) }
  return { ok: true, value: read.data, ...locatedBy(read.spot, positionOf) }
}

function tooLarge(most: string, file: string): Problem {
  return {
    code: 'text-too-large',
    pointer: '',
    message: `A text of more than ${most} is not read: divide it.`,
    file,
    line: 1,
    column: 1,
  }
}
