import type { QuantityName } from '../units/index.js'

/** A number with a unit, kept in SI. */
export interface QuantityField<Q extends QuantityName = QuantityName> {
  readonly type: 'quantity'
  readonly quantity: Q
}

/** One of a closed list of names; each name carries the words it is printed with. */
export interface ChoiceField<C extends string = string> {
  readonly type: 'choice'
  readonly choices: Readonly<Record<C, string>>
}

/** Free words: printed, never judged. */
export interface TextField {
  readonly type: 'text'
}

/** The id of another thing. Things that refer to it are counted there under `countedAs`. */
export interface ReferenceField {
  readonly type: 'reference'
  readonly to: readonly string[]
  readonly countedAs?: string
}

/** Several values in one entry; `unknown` may stand among them. */
export interface ListField<
  F extends ChoiceField | ReferenceField | TextField = ChoiceField | ReferenceField | TextField,
> {
  readonly type: 'list'
  readonly of: F
}

/** A field that holds one value or one list. */
export type LeafField = QuantityField | ChoiceField | TextField | ReferenceField | ListField

/** Values that belong together and are written as one map: `pipe: { type: ..., size: ... }`. */
export interface GroupField<F extends Readonly<Record<string, LeafField>> = Readonly<Record<string, LeafField>>> {
  readonly type: 'group'
  readonly fields: F
}

/** A field of a kind. */
export type Field = LeafField | GroupField
/** Fields by name. */
export type Fields = Readonly<Record<string, Field>>

/**
 * A field for an amount with a unit.
 *
 * @example
 * quantity('pressure') // reads "30 psi"
 */
export const quantity = <Q extends QuantityName>(name: Q): QuantityField<Q> => ({ type: 'quantity', quantity: name })
/**
 * A field for one of a closed list of names; each carries the words it is printed with.
 *
 * @example
 * choice({ clay: 'clay liner', unlined: 'unlined masonry' })
 */
export const choice = <C extends string>(choices: Readonly<Record<C, string>>): ChoiceField<C> => ({
  type: 'choice',
  choices,
})
/** A field for yes or no. */
export const yesNo: ChoiceField<'yes' | 'no'> = choice({ yes: 'yes', no: 'no' })
/** A field for free words: printed, never judged. */
export const text: TextField = { type: 'text' }
/**
 * A field for the id of another thing, which counts those that refer to it under `countedAs`.
 *
 * @example
 * reference('space', { countedAs: 'coAlarms' })
 */
export const reference = (
  to: string | readonly string[],
  options: { readonly countedAs?: string } = {},
): ReferenceField => ({
  type: 'reference',
  to: typeof to === 'string' ? [to] : to,
  ...options,
})
/** A field for several values in one entry; `unknown` may stand among them. */
export const listOf = <F extends ChoiceField | ReferenceField | TextField>(field: F): ListField<F> => ({
  type: 'list',
  of: field,
})
/** A field for values that are written together as one map, such as `pipe: { type: ..., size: ... }`. */
export const group = <F extends Readonly<Record<string, LeafField>>>(fields: F): GroupField<F> => ({
  type: 'group',
  fields,
})

/** Every leaf of a set of fields under its full name; a group's members are `pipe.type`, `pipe.size`. */
export function leavesOf(fields: Fields): ReadonlyMap<string, LeafField> {
  return new Map(Object.entries(fields).flatMap(([name, field]) => leavesOfOne(name, field)))
}

function leavesOfOne(name: string, field: Field): [string, LeafField][] {
  if (field.type !== 'group') return [[name, field]]
  return Object.entries(field.fields).map(([inner, leaf]) => [`${name}.${inner}`, leaf])
}
