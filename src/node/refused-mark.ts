import { excerpt, type Mistake } from './mistake.js'

/** What was passed last: the sign that plain text follows, that text, that text and a space, the start of an item, or something else. */
export type Passed = 'sign' | 'plain' | 'plain and space' | 'item start' | 'other'

/** The mistake in a mark that YAML knows and we refuse, or that changes text unseen; empty for any other word. */
export function refusedMark(type: string, word: string, at: number, passed: Passed): readonly Mistake[] {
  const shown = excerpt(word)
  switch (type) {
    case 'anchor':
      return [{ code: 'anchor', at, message: `The anchor "${shown}" is refused: write each value out. ${quoted('&')}` }]
    case 'alias':
      return [
        { code: 'alias', at, message: `The reference "${shown}" is refused: write the value out. ${quoted('*')}` },
      ]
    case 'tag':
      return [{ code: 'tag', at, message: `The tag "${shown}" is refused: the field tells the type. ${quoted('!')}` }]
    case 'directive-line':
      return [{ code: 'directive', at, message: `The directive "${shown}" is refused: leave the line out.` }]
    case 'comment':
      return passed === 'plain and space' && startsLikeText.test(word)
        ? [{ code: 'unquoted-hash', at, message: swallowed }]
        : []
    case 'comma':
      return passed === 'item start'
        ? [{ code: 'stray-comma', at, message: 'Nothing stands before this comma: drop it, or write "unknown".' }]
        : []
    default:
      return []
  }
}

/** What is passed after a word. */
export function passing(type: string, word: string, passed: Passed): Passed {
  switch (type) {
    case 'scalar':
      return 'sign'
    case 'content':
      return word.endsWith('\n') ? 'other' : 'plain'
    case 'space':
      return passed === 'plain' ? 'plain and space' : passed
    case 'comma':
    case 'flow-map-start':
    case 'flow-seq-start':
      return 'item start'
    case 'newline':
    case 'comment':
      return passed === 'item start' ? passed : 'other'
    default:
      return 'other'
  }
}

const startsLikeText = /^#[\p{L}\p{N}]/u

const swallowed =
  'Text with " #" in it is written in quotes: what follows is taken for a comment. A comment has a space after its "#".'

function quoted(mark: string): string {
  return `A text that begins with "${mark}" is written in quotes.`
}
