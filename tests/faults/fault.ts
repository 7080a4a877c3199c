import type { Edit } from '../../src/model/index.js'

/** A fault planted alone in the clean house, and everything that it makes the report say. Companions are listed. */
export type Fault = readonly [name: string, edits: readonly Edit[], lines: readonly string[]]

export const set = (address: string, to: unknown): Edit => ({ set: address, to })
