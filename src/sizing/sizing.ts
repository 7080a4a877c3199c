import type { Sized } from './sized.js'

/** A calculated number, or the sentence that says which number is impossible. */
export type Sizing = ({ readonly sized: true } & Sized) | { readonly sized: false; readonly why: string }

/** A sizing that came to a number. */
export function sized(result: Sized): Sizing {
  return { sized: true, ...result }
}

/**
 * A sizing that came to none.
 *
 * @param why a sentence that names the impossible number
 */
export function cannotSize(why: string): Sizing {
  return { sized: false, why }
}
