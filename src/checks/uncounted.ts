import type { Missing } from '../facts/index.js'

/** The question how many there are of a kind, where there may be more than are listed. */
export function uncounted({ name }: { readonly name: string }, more: number): readonly Missing[] {
  return more > 0 ? [{ subject: name, fact: 'count' }] : []
}
