import type { Adapter } from './adapter.js'

/** Pumps and branches are not sized yet: their records are listed with this reason and count as not within. */
export const adapters: Readonly<Record<string, Adapter>> = {
  'n-': () => ({ notApplicable: 'the library does not size pumps and branches yet' }),
}
