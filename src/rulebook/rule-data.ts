import type { Phase } from '../model/index.js'
import type { Ground, Nature, Severity } from './severity.js'

/** Where a demand comes from: which source, which clause of which edition, on what ground, and whether the text was read. */
export interface BasisData {
  readonly source: string
  readonly clause?: string | undefined
  readonly edition?: string | undefined
  readonly ground: Ground
  readonly known: 'read' | 'recalled'
}

/** A graded requirement as written. Conditions and values are read by code of their own. */
export interface DemandData {
  readonly id: string
  readonly severity: Severity
  readonly when?: unknown
  readonly value?: unknown
  readonly require?: unknown
  readonly say?: string | undefined
  readonly locked?: 'true' | 'yes' | undefined
  readonly proof?: 'photo' | undefined
  readonly basis: readonly BasisData[]
}

/** A rule file as written. */
export interface RuleData {
  readonly title: string
  readonly subject: string
  readonly from?: Phase | undefined
  readonly when?: unknown
  readonly measure?: { readonly fact: string; readonly operator: string } | undefined
  readonly demands: readonly DemandData[]
  readonly say?: { readonly fail: string } | undefined
  readonly because: string
  readonly remedy?: string | undefined
  readonly caution?: string | undefined
  readonly given?: Readonly<Record<string, unknown>> | undefined
  readonly examples?: readonly Readonly<Record<string, unknown>>[] | undefined
}

/** An entry of the bibliography. `family` tells which buildings a code judges; `none` judges all. */
export interface SourceData {
  readonly title: string
  readonly family: 'residential' | 'mechanical' | 'fuel-gas' | 'plumbing' | 'electrical' | 'none'
  readonly note?: string | undefined
}

/** Dates of a change, `[from, until)`, and the date of the job they are held against. */
export interface EffectiveData {
  readonly from?: string | undefined
  readonly until?: string | undefined
  readonly by: 'applicationDate' | 'installedOn'
}

interface Citation {
  readonly clause?: string | undefined
  readonly edition?: string | undefined
  readonly because?: string | undefined
  readonly effective?: EffectiveData | undefined
  readonly when?: unknown
  readonly basis?: readonly BasisData[] | undefined
}

/** `demand`: a demand that an authority adds to a rule. */
export interface DemandChangeData extends Citation {
  readonly demand: string
  readonly id?: string | undefined
  readonly severity: Severity
  readonly value?: unknown
  readonly require?: unknown
  readonly say?: string | undefined
  readonly proof?: 'photo' | undefined
  readonly nature: Nature
}

/** `exempt`: demands that an authority lets go. */
export interface ExemptChangeData extends Citation {
  readonly exempt: string
  readonly of?: readonly string[] | undefined
  readonly nature?: Nature | undefined
}

/** `add`: a rule that an authority brings. */
export interface AddChangeData {
  readonly add?: unknown
  readonly effective?: EffectiveData | undefined
  readonly nature: Nature
  readonly clause?: string | undefined
}

/** An authority's file as written. */
export interface OverlayData {
  readonly overlay: string
  readonly authority: { readonly name: string; readonly layer: 'state' | 'town' | 'utility' | 'insurer' | 'house' }
  readonly written: {
    readonly by: string
    readonly reviewedBy?: string | undefined
    readonly official: 'true' | 'false' | 'yes' | 'no'
    readonly lastVerified?: string | undefined
  }
  readonly basis?:
    | {
        readonly source: string
        readonly ground: Ground
        readonly known: 'read' | 'recalled'
        readonly edition?: string | undefined
      }
    | undefined
  readonly sources?: Readonly<Record<string, SourceData>> | undefined
  readonly changes: readonly unknown[]
}
