import type { QuantityName } from '../units/index.js'

/** How far an entry is meant: said, taken for granted, or copied from a form. */
export type Standing = 'stated' | 'assumed' | 'template'

export const standings: readonly Standing[] = ['stated', 'assumed', 'template']

/** How a value came to be known. A photo is evidence, not a way of knowing. */
export const waysOfKnowing = ['nameplate', 'manual', 'gauge', 'measured', 'drawing', 'owner', 'computed'] as const
/** How somebody came to know a value. */
export type WayOfKnowing = (typeof waysOfKnowing)[number]

/** A member of a list entry: a value, or `unknown`. */
export interface ListValue {
  readonly members: readonly string[]
  /** False when `unknown` stands in the list: there may be more. */
  readonly complete: boolean
}

/** A value as read. Quantities are bounds in SI, equal when the text gives one number; choices, text and references are words. */
export type EntryValue =
  | { readonly type: 'quantity'; readonly quantity: QuantityName; readonly low: number; readonly high: number }
  | { readonly type: 'word'; readonly word: string }
  | ({ readonly type: 'list' } & ListValue)

/** A value that the document gives, with everything said about it. What is not given has no entry. */
export interface Entry {
  readonly value: EntryValue
  /** The value as written. */
  readonly text: string
  readonly standing: Standing
  readonly how?: WayOfKnowing
  readonly by?: string
  readonly at?: string
  readonly because?: string
  readonly evidence: readonly string[]
  /** The equipment file that gave it, with the page of the manual; absent when the document itself did. */
  readonly equipment?: string
  readonly pointer: string
}
