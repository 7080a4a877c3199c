import type { everyComponent, everyLine } from './every-thing.js'
import type { WayOfKnowing, Standing } from './entry.js'
import type { ChoiceField, Fields, GroupField, ListField, QuantityField, ReferenceField, TextField } from './field.js'
import type { KindSpec, Medium, NoParts, PartKinds } from './kind.js'
import type { Phase } from './phase.js'

/** A value with what is known about it; the short form is the bare value. */
export interface LongEntry<T> {
  readonly value: T
  readonly standing?: Standing
  readonly how?: WayOfKnowing
  readonly by?: string
  readonly at?: string
  readonly because?: string
  /** Ids of evidence. */
  readonly evidence?: readonly string[]
  /** How far a stated amount may be off; asked of answers that are amounts. */
  readonly within?: string
}

/** A value as people write it: the bare text, `unknown`, or the long form. */
export type EntryWritten<T extends string> = T | 'unknown' | LongEntry<T | 'unknown'>
/** A list is one whole entry; `unknown` may stand in it. */
export type ListWritten<T extends string> =
  readonly (T | 'unknown')[] | 'unknown' | LongEntry<readonly (T | 'unknown')[] | 'unknown'>
/** A count is written as digits. */
export type CountWritten = EntryWritten<string> | number

type MemberWritten<F> = F extends ChoiceField<infer C> ? C : string
type LeafWritten<F> =
  F extends QuantityField<infer Q>
    ? 'count' extends Q
      ? CountWritten
      : EntryWritten<string>
    : F extends ChoiceField<infer C>
      ? EntryWritten<C>
      : F extends ReferenceField | TextField
        ? EntryWritten<string>
        : F extends ListField<infer M>
          ? ListWritten<MemberWritten<M>>
          : never
type FieldWritten<F> = F extends GroupField<infer G> ? { readonly [K in keyof G]?: LeafWritten<G[K]> } : LeafWritten<F>

/** Fields of a kind as the document holds them. */
export type FieldsWritten<F extends Fields> = { readonly [K in keyof F]?: FieldWritten<F[K]> }

/** Parts: a bare list, or a list with the number there is said to be. */
export type PartsWritten<T> = readonly T[] | { readonly complete?: CountWritten; readonly list?: readonly T[] }

interface Named {
  readonly id: string
  /** A name for people; ids stay short. */
  readonly name?: string
  readonly standing?: Standing
  readonly evidence?: readonly string[]
}

type PartWritten<K> = K extends KindSpec<string, infer F, NoParts> ? Named & FieldsWritten<F> : never
type PartsOf<P extends PartKinds> = { readonly [K in keyof P]?: PartsWritten<PartWritten<P[K]>> }

/** A component of one kind as the document holds it: plain text values, what apps build, save and edit. */
export type WrittenOf<K> =
  K extends KindSpec<infer N, infer F, infer P>
    ? Omit<Named, 'id'> & { readonly id: string | readonly string[]; readonly kind: N } & FieldsWritten<
          typeof everyComponent
        > &
        FieldsWritten<F> &
        PartsOf<P>
    : never

/** A thing of a section that has one kind only, such as a space: no `kind` is written. */
export type ItemWritten<K> =
  K extends KindSpec<string, infer F, infer P> ? Named & FieldsWritten<F> & PartsOf<P> : never

/** A line: an ordered run through ports in one medium. */
export type LineOf<K> =
  K extends KindSpec<string, infer F, infer P>
    ? Named & { readonly medium: Medium; readonly path: readonly string[] } & FieldsWritten<typeof everyLine> &
        FieldsWritten<F> &
        PartsOf<P>
    : never

/** A singleton section such as `site`. */
export type SingletonWritten<K> = K extends KindSpec<string, infer F, infer P> ? FieldsWritten<F> & PartsOf<P> : never

/** An official's written acceptance of one departure. */
export interface ApprovedModificationWritten {
  readonly rule: string
  readonly subject: string
  readonly accepts: Readonly<Record<string, Readonly<Record<string, string>>>>
  readonly by: string
  readonly evidence: readonly string[]
  readonly expires?: string
}

/** The parts of a document that no kind declares. */
export interface DocumentFrame {
  /** Version of the document schema. */
  readonly installation: 1 | '1'
  readonly name?: string
  readonly phase?: Phase
  readonly units?: 'ip' | 'si'
  /** Kinds of which there are none. */
  readonly none?: readonly string[]
  /** How many there are of a kind, a family, of states, or of `all` things. */
  readonly complete?: Readonly<Record<string, CountWritten>>
  readonly kept?: { readonly list: readonly string[]; readonly others?: 'new' | 'kept' | 'unknown' }
  readonly approved?: readonly ApprovedModificationWritten[]
}
