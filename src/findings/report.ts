import type { Contradiction, Phase, Place, WayOfKnowing } from '../model/index.js'
import type { Missing, TurningPoint } from '../facts/index.js'
import type { Ground, Nature, Severity } from '../rulebook/index.js'

/** What a check comes to: something binding fails, something binding cannot be told, or neither. */
export type Outcome = 'failing' | 'open' | 'clear'

/** What was compared with what, for one fact. */
export interface Evidence {
  /** Whether it tells when the demand applies, or what it requires. */
  readonly part: 'when' | 'require'
  /** As the rule writes it: `ventTermination.heightAboveGrade`. */
  readonly fact: string
  readonly subject: string
  readonly result: 'holds' | 'does not hold' | 'cannot be told'
  /** As printed; absent when unknown. */
  readonly value?: string
  /** The document's own words. */
  readonly written?: string
  readonly si?: { readonly low: number; readonly high: number }
  readonly operator: string
  readonly demanded?: string
  /** How far inside (positive) or outside (negative) the limit, as printed. */
  readonly margin?: string
  readonly standing: 'stated' | 'assumed' | 'stated, not traced'
  readonly how?: WayOfKnowing
  /** Ids of photos and papers behind the value. */
  readonly proof?: readonly string[]
  /** The equipment file that gave it. */
  readonly equipment?: string
}

/** Where a demand comes from, in words for a reader. */
export interface BasisTold {
  readonly source: string
  readonly clause?: string
  readonly edition?: string
  readonly ground: Ground
  readonly known: 'read' | 'recalled'
  /** Whether the document names the adopted edition of this source, and which. */
  readonly adopted: string
}

/** One demand of a finding, spoken or not. */
export interface DemandTold {
  readonly id: string
  readonly by: { readonly name: string; readonly id: string; readonly official?: boolean; readonly writtenBy?: string }
  readonly severity: Severity
  readonly verdict: 'pass' | 'fail' | 'undecided' | 'not-applicable'
  /** It is the one that the message is about. */
  readonly spoke: boolean
  readonly value?: string
  readonly margin?: string
  readonly basis: readonly BasisTold[]
  readonly nature?: Nature
  readonly since?: string
  /** The citation that lets it go, or that the office has to confirm. */
  readonly exempted?: string
}

/** A verdict worth reading. */
export interface Finding {
  /** Rule id with subject id: the same in every report, never an index, never the text. */
  readonly key: string
  readonly rule: string
  readonly title: string
  readonly verdict: 'fail' | 'undecided'
  readonly severity: Severity
  readonly ground: Ground
  readonly couldBe?: Severity
  readonly subject: {
    readonly kind: string
    readonly spoken: string
    readonly id: string
    readonly name?: string
    readonly place: Place
    readonly listed: boolean
  }
  readonly say: { readonly key: string; readonly params: Readonly<Record<string, string>> }
  readonly message: string
  readonly because: string
  readonly remedy?: string
  readonly caution?: string
  readonly demands: readonly DemandTold[]
  readonly restsOn?: 'assumption' | 'statement'
  readonly evidence: readonly Evidence[]
  readonly witness?: readonly string[]
  /** Where on the way it goes wrong. */
  readonly turningPoint?: TurningPoint
  readonly missing?: readonly Missing[]
  /** Rules that ask the same of a thing that may not be listed. */
  readonly rules?: readonly string[]
}

/** A finding that an official accepted in writing. */
export interface AcceptedFinding {
  readonly finding: Finding
  readonly by: string
  readonly evidence: readonly string[]
  readonly expires?: string
}

/** A fact to find out next, and how much hangs on it. */
export interface MissingFact extends Missing {
  /** How many verdicts it could settle or help to settle. */
  readonly decides: number
  readonly worst: Severity
  readonly rules: readonly string[]
}

/** Authorities that were named without an overlay, or that none was named. */
export interface Unheard {
  readonly authority?: string
  readonly message: string
}

/** An opened overlay at the foot of a report. */
export interface OverlayTold {
  readonly id: string
  readonly name: string
  readonly layer: string
  readonly official: boolean
  readonly writtenBy?: string
  readonly reviewedBy?: string
  readonly lastVerified?: string
  /** Last verified more than two years before the day of judging. */
  readonly stale?: true
  /** Whether the document names it. */
  readonly named: boolean
}

/** Everything one check has to say. Plain data; the same document and rulebook give the same bytes. */
export interface Report {
  readonly advisory: string
  readonly outcome: Outcome
  readonly headline: string
  readonly name?: string
  readonly tally: {
    readonly asked: number
    readonly pass: number
    readonly fail: number
    readonly undecided: number
    readonly notApplicable: number
    readonly broken: number
    readonly accepted: number
    /** Rules that wait for a later phase. */
    readonly later: number
  }
  readonly findings: readonly Finding[]
  readonly accepted: readonly AcceptedFinding[]
  readonly contradictions: readonly Contradiction[]
  readonly broken: readonly {
    readonly rule: string
    readonly subject: string
    readonly severity: Severity
    readonly error: string
  }[]
  readonly unheard: readonly Unheard[]
  readonly missing: readonly MissingFact[]
  readonly known: {
    readonly values: number
    readonly photo: number
    readonly gauge: number
    readonly typed: number
    readonly assumed: number
    readonly template: number
  }
  readonly passed?: readonly PassedVerdict[]
  readonly provenance: {
    readonly package: string
    readonly rulebook: {
      readonly ruleSets: readonly { readonly name: string; readonly version: string }[]
      readonly overlays: readonly OverlayTold[]
      readonly hash: string
    }
    /** SHA-256 of the written document in canonical JSON. */
    readonly document: string
    readonly judgedOn: string
    readonly phase: Phase | 'not stated: everything was asked'
  }
}

/** A verdict that needs no reading, listed on request. */
export interface PassedVerdict {
  readonly rule: string
  readonly subject: string
  readonly verdict: 'pass' | 'not-applicable'
  readonly evidence: readonly Evidence[]
}

/** What a report may be told. */
export interface ReportOptions {
  /** Today, as YYYY-MM-DD. Without it, what depends on today is unknown. */
  readonly judgedOn?: string
  /** List passes and rules that do not apply, with their numbers. */
  readonly listPassed?: boolean
}
