import type { LeafField } from '../field.js'
import type { KindSpec } from '../kind.js'
import type { Model } from '../model.js'

/** Where a named value of a thing is written. */
export type FieldPlace =
  | { readonly type: 'value'; readonly steps: readonly string[] }
  | { readonly type: 'parts'; readonly parts: string }
  | { readonly type: 'part-count'; readonly parts: string }
  /** A key that every thing of the section has, such as `name` or `path`. */
  | { readonly type: 'own'; readonly key: string }

/** Fields and statable answers of a kind under their full names. */
export function fieldsOf(model: Model, kind: KindSpec): ReadonlyMap<string, LeafField> {
  return new Map([...(model.leaves.get(kind.name) ?? []), ...(model.answers.get(kind.name) ?? [])])
}

/** Names of fields that are written as one map with several members. */
export function groupsOf(model: Model, kind: KindSpec): readonly string[] {
  const heads = [...fieldsOf(model, kind).keys()].filter((name) => name.includes('.')).map(headOf)
  return [...new Set(heads)]
}

/** Kinds that the document holds once, as a section of their own. The installation is the document itself. */
export function singletonsOf(model: Model): readonly KindSpec[] {
  return [...model.kinds.values()].filter((kind) => kind.section === 'singleton' && kind.name !== 'installation')
}

export function fieldPlace(model: Model, kind: KindSpec, name: string): FieldPlace | undefined {
  const [head, tail] = [headOf(name), name.slice(headOf(name).length + 1)]
  if (fieldsOf(model, kind).has(name) || groupsOf(model, kind).includes(name))
    return { type: 'value', steps: name.split('.') }
  if (name.startsWith('x-') && tail === '') return { type: 'own', key: name }
  if (Object.hasOwn(kind.parts, head) && tail === '') return { type: 'parts', parts: head }
  if (Object.hasOwn(kind.parts, head) && tail === 'complete') return { type: 'part-count', parts: head }
  return ownKeys(kind).includes(name) ? { type: 'own', key: name } : undefined
}

/** Every name that `fieldPlace` finds, for naming the nearest. */
export function fieldNames(model: Model, kind: KindSpec): readonly string[] {
  const parts = Object.keys(kind.parts)
  const counts = parts.map((name) => `${name}.complete`)
  return [...fieldsOf(model, kind).keys(), ...groupsOf(model, kind), ...parts, ...counts, ...ownKeys(kind)]
}

function ownKeys(kind: KindSpec): readonly string[] {
  switch (kind.section) {
    case 'singleton':
      return []
    case 'states':
      return ['standing', 'evidence']
    case 'lines':
      return ['id', 'name', 'standing', 'evidence', 'medium', 'path']
    case 'components':
    case 'parts':
    case 'zones':
    case 'spaces':
    case 'fixtures':
    case 'readings':
    case 'tests':
    case 'evidence':
      return ['id', 'kind', 'name', 'standing', 'evidence']
    default: {
      const never: never = kind.section
      return never
    }
  }
}

function headOf(name: string): string {
  return name.split('.', 1)[0] ?? name
}
