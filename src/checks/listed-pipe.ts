import type { PipeName } from '../tables/index.js'

/** The table that lists the bores of a pipe as a document names it: steel by schedule 40, as house piping is. */
export function listedPipe(type: string): PipeName | undefined {
  switch (type) {
    case 'copper-K':
    case 'copper-L':
    case 'copper-M':
      return type
    case 'steel':
    case 'galvanized-steel':
      return 'steel-40'
    case 'stainless':
      return 'stainless-40S'
    case 'pex':
    case 'pex-barrier':
      return 'pex'
    default:
      return undefined
  }
}

/** Said wherever the bore of such a pipe is used: a document does not tell its schedule. */
export const scheduleTaken = 'steel and stainless pipe is schedule 40'

/** Whether the wall of a pipe is taken, not told. */
export function isScheduleTaken(type: string): boolean {
  return type === 'steel' || type === 'galvanized-steel' || type === 'stainless'
}
