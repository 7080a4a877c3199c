import type { Almanac } from 'json-rules-engine'
import type { HostCondition, HostRule } from './host-rule.js'

/** What a host puts beside our rules. */
export interface HostContent {
  readonly hostRules?: readonly HostRule[]
  /** By name: a value, or a function of parameters and the almanac of the thing that is asked about. */
  readonly hostFacts?: Readonly<Record<string, unknown>>
  /** Operators of the host's own rules by name. */
  readonly hostOperators?: Readonly<Record<string, (fact: never, value: never) => boolean>>
  /** Conditions that several rules refer to by name. */
  readonly hostConditions?: Readonly<Record<string, HostCondition>>
}

/** A fact of the host's that is worked out when asked. */
export type HostFact = (params: Readonly<Record<string, unknown>>, almanac: Almanac) => unknown
