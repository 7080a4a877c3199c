import type { LeafField, Model } from '../model/index.js'
import type { FactHandle } from './fact.js'

/** All facts that a rulebook knows, by kind. */
export interface Catalogue {
  readonly model: Model
  readonly handles: readonly FactHandle[]
  /** The derived fact of a name on one kind; fields and counts have none. */
  readonly derived: (kind: string, fact: string) => FactHandle | undefined
}

export function defineCatalogue(model: Model, handles: readonly FactHandle[]): Catalogue {
  const byKind = new Map<string, Map<string, FactHandle>>()
  for (const handle of handles) {
    for (const kind of model.kindsIn.get(handle.of) ?? []) {
      const facts = byKind.get(kind) ?? new Map<string, FactHandle>()
      facts.set(handle.name, handle)
      byKind.set(kind, facts)
    }
  }
  return Object.freeze({ model, handles, derived: (kind: string, fact: string) => byKind.get(kind)?.get(fact) })
}

/** The type of a fact on one kind: a field, a derived fact, parts or things that refer to it, counted. */
export function typeOf(catalogue: Catalogue, kind: string, name: string): LeafField | undefined {
  const { model } = catalogue
  const own = catalogue.derived(kind, name)?.type ?? model.leaves.get(kind)?.get(name)
  if (own !== undefined) return own
  const counted =
    Object.hasOwn(model.kinds.get(kind)?.parts ?? {}, name) ||
    (model.inverse.get(kind) ?? []).some((inverse) => inverse.countedAs === name)
  return counted ? { type: 'quantity', quantity: 'count' } : undefined
}

/** Names of every fact of the kinds given, for the nearest name. */
export function factNames(catalogue: Catalogue, ...kinds: readonly string[]): readonly string[] {
  const { model, handles } = catalogue
  return [
    ...new Set(
      kinds.flatMap((kind) => [
        ...(model.leaves.get(kind)?.keys() ?? []),
        ...handles.filter((handle) => (model.kindsIn.get(handle.of) ?? []).includes(kind)).map((handle) => handle.name),
        ...Object.keys(model.kinds.get(kind)?.parts ?? {}),
        ...(model.inverse.get(kind) ?? []).map((inverse) => inverse.countedAs),
      ]),
    ),
  ]
}

/** Names of the sections that rules of any subject may mention. */
export function singletonsOf(model: Model): readonly string[] {
  return [...model.kinds.values()].filter((kind) => kind.section === 'singleton').map((kind) => kind.name)
}
