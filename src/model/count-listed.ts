import type { Installation } from './installation.js'

/** How many things a document lists. */
export interface Listed {
  /** What `all` counts: components, lines, zones, spaces, fixtures, readings, tests. */
  readonly all: number
  readonly states: number
  /** By kind, in the order of the model; kinds of which nothing is listed are left out. */
  readonly kinds: ReadonlyMap<string, number>
  /** What names in `complete` would count, families included. */
  readonly of: (name: string) => number
}

/** Counts what is listed, as a person would who walks through the document. */
export function countListed({ model, ofKind, total }: Installation): Listed {
  const numberOf = (kind: string): number => ofKind.get(kind)?.length ?? 0
  const listed = [...model.kinds.values()].filter(({ name, section }) => section !== 'singleton' && numberOf(name) > 0)
  const of = (name: string): number => (model.kindsIn.get(name) ?? []).reduce((sum, kind) => sum + numberOf(kind), 0)
  const states = numberOf('state')
  return {
    all: total,
    states,
    kinds: new Map(listed.map(({ name }) => [name, numberOf(name)])),
    of: (name) => (name === 'all' ? total : name === 'states' ? states : of(name)),
  }
}
