import type { Fields } from './field.js'

/** What runs through a port. Lines join ports of one medium. */
export type Medium =
  | 'heatingWater'
  /** Of ports that suit heating water and drinking water alike, such as the inlet of a relief valve. Lines never carry it. */
  | 'eitherWater'
  | 'potableCold'
  | 'potableHot'
  | 'discharge'
  | 'condensate'
  | 'gas'
  | 'flueGas'
  | 'combustionAir'

/** Where in the walk round the house a thing is looked at; findings are told in this order. */
export const places = [
  'gas',
  'vent',
  'boiler',
  'relief',
  'fill',
  'expansion',
  'hotWater',
  'condensate',
  'electrical',
  'alarms',
  'papers',
] as const
/** A stop on the walk round the house. */
export type Place = (typeof places)[number]

/** The part of the document in which things of a kind are written. */
export type Section =
  | 'components'
  | 'lines'
  | 'zones'
  | 'spaces'
  | 'fixtures'
  | 'states'
  | 'readings'
  | 'tests'
  | 'evidence'
  | 'parts'
  | 'singleton'

/** Whether a way shuts: always able to, never, or only while a field does not say otherwise. */
export type Closing = 'always' | 'never' | { readonly unless: string; readonly is: string }

/** Two ports of a component that the medium can pass between. */
export interface Way {
  readonly between: readonly [string, string]
  readonly closes: Closing
  /** The way lets the medium through in one direction only: always, or where a field says so. */
  readonly checks?: boolean | { readonly when: string; readonly is: string }
  /** The way strains, reduces or otherwise holds back what passes. */
  readonly restricts?: boolean
}

/** Kinds that rules may speak of together, with the fields they share. */
export interface FamilySpec<F extends Fields = Fields> {
  readonly name: string
  readonly spoken: string
  readonly fields: F
}

/** One kind of thing: the single source of its types, schema, facts and words. */
export interface KindSpec<N extends string = string, F extends Fields = Fields, P extends PartKinds = PartKinds> {
  readonly name: N
  readonly spoken: string
  readonly section: Section
  readonly place: Place
  readonly families: readonly FamilySpec[]
  readonly ports: Readonly<Record<string, Medium>>
  /** The way a bare id takes inside a path: from the first port to the second. */
  readonly through?: readonly [string, string]
  readonly ways: readonly Way[]
  /** A port name with `*` stands for as many ports as the field says: `branch*` by `branches`. */
  readonly portsCountedBy?: string
  /** How it draws power: all the time, or only in states that energize it. */
  readonly draws?: 'steady' | 'switched'
  readonly fields: F
  readonly parts: P
}

/** The parts of a kind that has none. */
// eslint-disable-next-line @typescript-eslint/no-generated-empty-object-type -- a map that is known to hold nothing
export type NoParts = Record<never, never>
export type PartKinds = Readonly<Record<string, KindSpec<string, Fields, NoParts>>>

interface KindWords<F extends Fields> {
  readonly spoken: string
  readonly place: Place
  readonly section?: Section
  readonly families?: readonly FamilySpec[]
  readonly ports?: Readonly<Record<string, Medium>>
  readonly through?: readonly [string, string]
  readonly ways?: readonly Way[]
  readonly portsCountedBy?: string
  readonly draws?: 'steady' | 'switched'
  readonly fields: F
}

/**
 * Declares a kind. Fields of its families are repeated in `fields` by spreading them, so that types follow without help.
 *
 * @example
 * const strainer = kind('strainer', { spoken: 'strainer', place: 'fill', fields: { mesh: text } })
 */
export function kind<N extends string, F extends Fields, P extends PartKinds>(
  name: N,
  words: KindWords<F> & { readonly parts: P },
): KindSpec<N, F, P>
export function kind<N extends string, F extends Fields>(name: N, words: KindWords<F>): KindSpec<N, F, NoParts>
export function kind(name: string, words: KindWords<Fields> & { readonly parts?: PartKinds }): KindSpec {
  return Object.freeze({ section: 'components' as const, families: [], ports: {}, ways: [], parts: {}, ...words, name })
}

/** Declares a family: kinds that rules may speak of together, with the fields they share. */
export function family<F extends Fields>(
  name: string,
  words: { readonly spoken: string; readonly fields: F },
): FamilySpec<F> {
  return Object.freeze({ name, ...words })
}
