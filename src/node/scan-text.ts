import { CST, Lexer, Parser } from 'yaml'
import { mostProblems, type Mistake } from './mistake.js'
import { passing, refusedMark, type Passed } from './refused-mark.js'

/** Lists and maps may stand this deep inside one another. */
export const deepestNesting = 64
/** Words, marks, spaces and line ends: a house with ten thousand components has about 700,000. */
const mostWords = 2_000_000

/** A text as the parser's tokens, or what forbids to go on. Marks that are refused do not stop the scan. */
export type Scanned =
  | { readonly ok: true; readonly tokens: readonly CST.Token[]; readonly refused: readonly Mistake[] }
  | { readonly ok: false; readonly mistake: Mistake }

/** Goes through a text word by word, so that a hostile text is left before it can grow in memory. */
export function scanText(text: string): Scanned {
  const parser = new Parser()
  const tokens: CST.Token[] = []
  const refused: Mistake[] = []
  let passed: Passed = 'other'
  let words = 0
  let faults = 0
  for (const word of new Lexer().lex(text)) {
    const at = parser.offset
    const type = passed === 'sign' ? 'content' : (CST.tokenType(word) ?? 'content')
    const made = [...parser.next(word)]
    tokens.push(...made)
    refused.push(...refusedMark(type, word, at, passed))
    passed = passing(type, word, passed)
    words += 1
    faults += made.filter((token) => token.type === 'error').length
    const mistake = beyondBounds(words, parser.stack, at)
    if (mistake !== undefined) return { ok: false, mistake }
    if (refused.length > mostProblems || faults > mostProblems) break
  }
  return { ok: true, tokens: [...tokens, ...parser.end()], refused }
}

function beyondBounds(words: number, open: readonly CST.Token[], at: number): Mistake | undefined {
  if (words > mostWords) {
    return {
      code: 'text-too-large',
      at,
      message: `A text of more than ${mostWords} words and marks is not read: divide it.`,
    }
  }
  if (open.length <= deepestNesting || open.filter(isCollection).length <= deepestNesting) return undefined
  return {
    code: 'nested-too-deep',
    at,
    message: `Lists and maps stand more than ${deepestNesting} deep inside one another here.`,
  }
}

function isCollection(token: CST.Token): boolean {
  return token.type === 'block-map' || token.type === 'block-seq' || token.type === 'flow-collection'
}
