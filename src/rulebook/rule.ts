import type { Phase, Place } from '../model/index.js'
import type { Condition } from './condition.js'
import type { BasisData } from './rule-data.js'
import type { Nature, Severity } from './severity.js'

/** Who puts a demand: a rule set, or an authority through its overlay. */
export interface Authority {
  /** Name of the rule set or overlay: `base`, `saltmarrow`. */
  readonly id: string
  /** As it is printed: `City of Saltmarrow`. */
  readonly name: string
  readonly layer: 'base' | 'state' | 'town' | 'utility' | 'insurer' | 'house'
  /** Whether the authority itself wrote or reviewed the file. */
  readonly official: boolean
  readonly writtenBy?: string
  readonly reviewedBy?: string
  readonly lastVerified?: string
}

/** From when until when something is demanded, and by which date of the job. */
export interface Effective {
  readonly from?: string
  readonly until?: string
  readonly by: 'applicationDate' | 'installedOn'
}

/** A citation that lets a demand go. */
export interface Exemption {
  readonly authority: Authority
  readonly when?: Condition
  /** The authority is named and the dates fit. */
  readonly applies?: Condition
  readonly clause: string
  readonly because?: string
}

/** One graded requirement, compiled. */
export interface Demand {
  readonly id: string
  readonly severity: Severity
  readonly authority: Authority
  readonly nature?: Nature
  readonly applies?: Condition
  readonly effective?: Effective
  readonly when?: Condition
  readonly require: Condition
  readonly exemptions: readonly Exemption[]
  readonly locked: boolean
  readonly proof?: 'photo'
  readonly basis: readonly BasisData[]
  readonly say?: string
  readonly because?: string
}

/** One rule, compiled: what it is asked of, when it applies, what it demands, and its words. */
export interface Rule {
  readonly id: string
  readonly title: string
  /** Kind, family or singleton. */
  readonly subject: string
  readonly kinds: readonly string[]
  readonly place: Place
  readonly from: Phase
  readonly when?: Condition
  readonly demands: readonly Demand[]
  readonly say: string
  readonly because: string
  readonly remedy?: string
  readonly caution?: string
}
