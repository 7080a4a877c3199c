import type { Edit } from '../../src/model/index.js'

/** What is built wrong, the edits that build it so in the clean house, and everything that the report then says. */
export type PlantedFault = readonly [string, readonly Edit[], readonly string[]]

export const set = (address: string, to: unknown): Edit => ({ set: address, to })
