import { fieldsOfEvery } from './every-thing.js'
import { leavesOf, type LeafField, type ReferenceField } from './field.js'
import type { FamilySpec, KindSpec } from './kind.js'

/** How things of one kind refer to another: `coAlarm.space` is counted at the space as `coAlarms`. */
export interface InverseReference {
  readonly kind: string
  readonly field: string
  readonly countedAs: string
}

/** All kinds that a rulebook knows, indexed. */
export interface Model {
  readonly kinds: ReadonlyMap<string, KindSpec>
  readonly families: ReadonlyMap<string, FamilySpec>
  /** Kind names in each family, and each kind under its own name. */
  readonly kindsIn: ReadonlyMap<string, readonly string[]>
  /** Fields by kind, those of every component included. */
  readonly leaves: ReadonlyMap<string, ReadonlyMap<string, LeafField>>
  /** Derived facts that may be stated, by kind. */
  readonly answers: ReadonlyMap<string, ReadonlyMap<string, LeafField>>
  readonly ownerOf: ReadonlyMap<string, { readonly kind: string; readonly parts: string }>
  /** By the kind referred to. */
  readonly inverse: ReadonlyMap<string, readonly InverseReference[]>
}

/** An answer that a document may state in place of a drawing or a calculation: a derived fact written as a field. */
export interface AnswerField {
  /** Kind or family. */
  readonly of: string
  readonly name: string
  readonly field: LeafField
}

/** Indexes a list of kinds. Parts are found through their owners. */
export function defineModel(listed: readonly KindSpec[], answerFields: readonly AnswerField[] = []): Model {
  const all = [...new Set(listed.flatMap((kind) => [kind, ...Object.values(kind.parts)]))]
  const kinds = new Map(all.map((kind) => [kind.name, kind]))
  const families = new Map(all.flatMap((kind) => kind.families.map((family) => [family.name, family] as const)))
  const kindsIn = new Map<string, string[]>(all.map((kind) => [kind.name, [kind.name]]))
  for (const kind of all) for (const family of kind.families) push(kindsIn, family.name, kind.name)
  const leaves = new Map(all.map((kind) => [kind.name, leavesOf({ ...fieldsOfEvery(kind.section), ...kind.fields })]))
  const answers = answersBy(answerFields, kindsIn)
  return Object.freeze({
    kinds,
    families,
    kindsIn,
    leaves,
    answers,
    ownerOf: ownersIn(all),
    inverse: inverseOf(leaves, kindsIn),
  })
}

function ownersIn(kinds: readonly KindSpec[]): Model['ownerOf'] {
  return new Map(
    kinds.flatMap((kind) =>
      Object.entries(kind.parts).map(([parts, part]) => [part.name, { kind: kind.name, parts }] as const),
    ),
  )
}

function answersBy(fields: readonly AnswerField[], kindsIn: Model['kindsIn']): Model['answers'] {
  const answers = new Map<string, Map<string, LeafField>>()
  for (const { of, name, field } of fields) {
    for (const kind of kindsIn.get(of) ?? []) answers.set(kind, new Map(answers.get(kind)).set(name, field))
  }
  return answers
}

function inverseOf(leaves: Model['leaves'], kindsIn: Model['kindsIn']): Model['inverse'] {
  const inverse = new Map<string, InverseReference[]>()
  for (const [kind, fields] of leaves) {
    for (const { target, ...one } of [...fields].flatMap(([field, leaf]) => countedIn(kind, field, leaf, kindsIn)))
      push(inverse, target, one)
  }
  return inverse
}

function countedIn(
  kind: string,
  field: string,
  leaf: LeafField,
  kindsIn: Model['kindsIn'],
): readonly (InverseReference & { readonly target: string })[] {
  const reference = referenceIn(leaf)
  if (reference?.countedAs === undefined) return []
  const { countedAs } = reference
  return reference.to.flatMap((name) => kindsIn.get(name) ?? []).map((target) => ({ target, kind, field, countedAs }))
}

function referenceIn(leaf: LeafField): ReferenceField | undefined {
  if (leaf.type === 'reference') return leaf
  return leaf.type === 'list' && leaf.of.type === 'reference' ? leaf.of : undefined
}

function push<V>(map: Map<string, V[]>, key: string, value: V): void {
  const list = map.get(key)
  if (list === undefined) map.set(key, [value])
  else list.push(value)
}
