import { isCollection, visit, type Document } from 'yaml'
import { explainSyntax, type Fault } from './explain-syntax.js'
import type { Mistake, Position } from './mistake.js'
import { endOf, startOf, wayOfWriting } from './node-text.js'

/** Where a text is no YAML. */
export interface Broken {
  readonly broken: readonly Mistake[]
  /** The tree is a guess around such places: what seems wrong in it there may be right. */
  readonly isDoubtful: (mistake: Mistake) => boolean
}

/** Tells one mistake a line: the parser tells one slip several times. What is not closed is shown where it opens. */
export function brokenPlaces(document: Document, text: string, positionOf: (at: number) => Position): Broken {
  const byLine = new Map<number, Fault>()
  for (const fault of document.errors.filter(isNews)) {
    const { line } = positionOf(fault.pos[0])
    byLine.set(line, plainer(byLine.get(line), fault))
  }
  const mistakes = [...byLine.values()].map((fault) => ({ ...explainSyntax(fault, text), at: fault.pos[0] }))
  const broken = mistakes.some(isUnclosed) ? atOpenings(mistakes, document) : mistakes
  const first = mistakes.reduce((least, { at }) => Math.min(least, at), Infinity)
  return { broken, isDoubtful: (mistake) => isDoubtful(mistake, first, positionOf(mistake.at).line, byLine) }
}

function isDoubtful(mistake: Mistake, first: number, line: number, broken: ReadonlyMap<number, Fault>): boolean {
  switch (mistake.code) {
    case 'duplicate-key':
      return mistake.at > first
    case 'empty-value':
    case 'key-not-text':
    case 'key-without-value':
      return [line - 1, line, line + 1].some((near) => broken.has(near))
    default:
      return broken.has(line)
  }
}

// The scan has refused these marks and stray commas already; how they are misused besides is no help.
function isNews(fault: Fault): boolean {
  if (fault.code === 'UNEXPECTED_TOKEN') return !/^Unexpected (,|empty item)/.test(fault.message)
  return !/ALIAS|ANCHOR|TAG_RESOLVE|TAGS|DIRECTIVE|PROP_ORDER|COLLECTION_TYPE/.test(fault.code)
}

// A key over two lines is the cause of what else the parser says of its line.
function plainer(told: Fault | undefined, fault: Fault): Fault {
  return told === undefined || fault.code === 'MULTILINE_IMPLICIT_KEY' ? fault : told
}

function isUnclosed(mistake: Mistake): boolean {
  return mistake.code === 'unclosed' || mistake.code === 'unclosed-quote'
}

function atOpenings(mistakes: readonly Mistake[], document: Document): readonly Mistake[] {
  const openings = new Map<string, number>()
  visit(document, {
    Node: (_, node) => {
      const name = `${codeIfUnclosed(node)} ${endOf(node)}`
      if (!openings.has(name)) openings.set(name, startOf(node))
    },
  })
  return mistakes.map((mistake) => ({ ...mistake, at: openings.get(`${mistake.code} ${mistake.at}`) ?? mistake.at }))
}

function codeIfUnclosed(node: unknown): string {
  if (isCollection(node)) return node.flow === true ? 'unclosed' : ''
  return wayOfWriting(node) === 'quoted' ? 'unclosed-quote' : ''
}
