import { builtIn } from './built-in.js'
import type { Plugin } from './rulebook/index.js'

/**
 * The base rule set: kinds, facts, checks and rules of a house with a condensing boiler, stored hot water and several zones.
 *
 * @example
 * const rulebook = openRulebook({ ruleSets: [base] })
 */
export const base: Plugin = builtIn
