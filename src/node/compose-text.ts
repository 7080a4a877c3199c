import { Composer, type CST, type Document } from 'yaml'
import { brokenPlaces, type Broken } from './broken-places.js'
import type { Mistake, Position } from './mistake.js'
import { textOf, wayOfWriting } from './node-text.js'
import { scanText } from './scan-text.js'

/** A text as a tree of nodes, with what is wrong in its notation. */
export interface Composed extends Broken {
  /** Absent where the text was left unread. */
  readonly root?: unknown
  /** What is refused wherever it stands. */
  readonly refused: readonly Mistake[]
}

/** Parses one document with every scalar kept as text. */
export function composeText(text: string, positionOf: (at: number) => Position): Composed {
  const scanned = scanText(text)
  if (!scanned.ok) return unread([scanned.mistake])
  const [, second] = scanned.tokens.filter((token) => token.type === 'document')
  const ours = second === undefined ? scanned.tokens : scanned.tokens.slice(0, scanned.tokens.indexOf(second))
  const document = composeDocument(ours, text.length)
  const refused = second === undefined ? scanned.refused : [...scanned.refused, severalDocuments(second)]
  const { broken, isDoubtful } = brokenPlaces(document, text, positionOf)
  if (isEmpty(document)) return { refused: broken.length > 0 ? refused : [...refused, nothing], broken, isDoubtful }
  return {
    root: document.contents,
    refused,
    broken: broken.filter((mistake) => !isOpenedBySwallowing(mistake, refused)),
    isDoubtful,
  }
}

const nothing: Mistake = { code: 'empty-document', at: 0, message: 'Nothing is written here.' }

function unread(refused: readonly Mistake[]): Composed {
  return { refused, broken: [], isDoubtful: () => false }
}

// Keys are compared in our own walk: the library's comparison takes the square of their number.
function composeDocument(tokens: readonly CST.Token[], end: number): Document.Parsed {
  const composer = new Composer({ schema: 'failsafe', uniqueKeys: false, prettyErrors: false })
  const [document] = composer.compose(tokens, true, end)
  if (document === undefined)
    throw new Error('The YAML parser gave no document for a text that it must answer with one.')
  return document
}

function isEmpty(document: Document): boolean {
  return (
    document.contents === null || (textOf(document.contents) === '' && wayOfWriting(document.contents) !== 'quoted')
  )
}

// A comment nobody meant has taken the closing bracket along.
function isOpenedBySwallowing(mistake: Mistake, refused: readonly Mistake[]): boolean {
  return mistake.code === 'unclosed' && refused.some(({ code, at }) => code === 'unquoted-hash' && at > mistake.at)
}

function severalDocuments(second: CST.Token): Mistake {
  return {
    code: 'several-documents',
    at: second.offset,
    message: 'A second document begins here: write one document in a file.',
  }
}
