import { typeOf, type Catalogue } from '../../facts/index.js'

/** Where a fact of a rule lives in the small world of an example: the thing, its kind, and the fact's own name. */
export interface FactPlace {
  readonly thing: string
  readonly kind: string
  readonly fact: string
  /** The reference of the subject that leads to the thing. */
  readonly reference?: string
}

export const subjectId = 'subject'

/** Finds the place of `subject.fact`, `subject.reference.fact` or `singleton.fact` for a subject of one kind. */
export function placeOf(catalogue: Catalogue, kind: string, path: string): FactPlace | undefined {
  const { model } = catalogue
  const [first = '', ...rest] = path.split('.')
  const fact = rest.join('.')
  if (model.kinds.get(first)?.section === 'singleton' && first !== kind) return { thing: first, kind: first, fact }
  if (typeOf(catalogue, kind, fact) !== undefined) return { thing: idFor(catalogue, kind), kind, fact }
  const [reference = '', ...inner] = rest
  const target = targetOf(catalogue, kind, reference)
  return target === undefined ? undefined : { thing: reference, kind: target, fact: inner.join('.'), reference }
}

/** The id of the subject: a singleton has the name of its section. */
export function idFor(catalogue: Catalogue, kind: string): string {
  return catalogue.model.kinds.get(kind)?.section === 'singleton' ? kind : subjectId
}

function targetOf({ model }: Catalogue, kind: string, reference: string): string | undefined {
  const field = model.leaves.get(kind)?.get(reference)
  if (field?.type === 'reference') return field.to.flatMap((name) => model.kindsIn.get(name) ?? [])[0]
  return model.ownerOf.get(kind)?.kind === reference ? reference : undefined
}
