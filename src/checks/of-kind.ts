import { fitting, type KindSpec, type Thing } from '../model/index.js'

/** Whether a thing is of one of some kinds. */
export function isOfKind(...kinds: readonly KindSpec[]): (thing: Thing) => boolean {
  const names = new Set(kinds.map(({ name }) => name))
  return ({ kind }) => names.has(kind.name)
}

/** Whether a thing belongs to a family. */
export function isInFamily({ kind }: Thing, family: { readonly name: string }): boolean {
  return kind.families.some(({ name }) => name === family.name)
}

/** Pipe and fittings: what a thing that is screwed on directly may stand on. */
export function isPipeOrFitting(thing: Thing): boolean {
  return thing.kind.section === 'lines' || isInFamily(thing, fitting)
}
