import * as z from 'zod/mini'
import { phases } from '../model/index.js'
import type {
  AddChangeData,
  BasisData,
  DemandChangeData,
  DemandData,
  EffectiveData,
  ExemptChangeData,
  OverlayData,
  RuleData,
  SourceData,
} from './rule-data.js'
import { grounds, natures, severities } from './severity.js'

const words = z.string()
const anything = z.unknown()

/** Where a demand comes from: which source, which clause of which edition, on what ground, and whether the text was read. */
export const basisShape: z.ZodMiniType<BasisData> = z.strictObject({
  source: words,
  clause: z.optional(words),
  edition: z.optional(words),
  ground: z.enum(grounds),
  known: z.enum(['read', 'recalled']),
})

const sayShape = z.strictObject({ fail: words })

export const demandShape: z.ZodMiniType<DemandData> = z.strictObject({
  id: words,
  severity: z.enum(severities),
  when: z.optional(anything),
  value: z.optional(anything),
  require: z.optional(anything),
  say: z.optional(words),
  locked: z.optional(z.enum(['true', 'yes'])),
  proof: z.optional(z.enum(['photo'])),
  basis: z.array(basisShape).check(z.minLength(1)),
})

export const ruleShape: z.ZodMiniType<RuleData> = z.strictObject({
  title: words,
  subject: words,
  from: z.optional(z.enum(phases)),
  when: z.optional(anything),
  measure: z.optional(z.strictObject({ fact: words, operator: words })),
  demands: z.array(demandShape),
  say: z.optional(sayShape),
  because: words,
  remedy: z.optional(words),
  caution: z.optional(words),
  given: z.optional(z.record(words, anything)),
  examples: z.optional(z.array(z.record(words, anything))),
})

export const sourceShape: z.ZodMiniType<SourceData> = z.strictObject({
  title: words,
  family: z.enum(['residential', 'mechanical', 'fuel-gas', 'plumbing', 'electrical', 'none']),
  note: z.optional(words),
})

const effectiveShape: z.ZodMiniType<EffectiveData> = z.strictObject({
  from: z.optional(words),
  until: z.optional(words),
  by: z.enum(['applicationDate', 'installedOn']),
})

const citation = {
  clause: z.optional(words),
  edition: z.optional(words),
  because: z.optional(words),
  nature: z.enum(natures),
  effective: z.optional(effectiveShape),
  when: z.optional(anything),
  basis: z.optional(z.array(basisShape)),
}

export const demandChangeShape: z.ZodMiniType<DemandChangeData> = z.strictObject({
  demand: words,
  id: z.optional(words),
  severity: z.enum(severities),
  value: z.optional(anything),
  require: z.optional(anything),
  say: z.optional(words),
  proof: z.optional(z.enum(['photo'])),
  ...citation,
})

export const exemptChangeShape: z.ZodMiniType<ExemptChangeData> = z.strictObject({
  exempt: words,
  of: z.optional(z.array(words)),
  ...citation,
  nature: z.optional(z.enum(natures)),
})

export const addChangeShape: z.ZodMiniType<AddChangeData> = z.strictObject({
  add: anything,
  effective: z.optional(effectiveShape),
  nature: z.enum(natures),
  clause: z.optional(words),
})

export const overlayShape: z.ZodMiniType<OverlayData> = z.strictObject({
  overlay: words,
  authority: z.strictObject({ name: words, layer: z.enum(['state', 'town', 'utility', 'insurer', 'house']) }),
  written: z.strictObject({
    by: words,
    reviewedBy: z.optional(words),
    official: z.enum(['true', 'false', 'yes', 'no']),
    lastVerified: z.optional(words),
  }),
  basis: z.optional(
    z.strictObject({
      source: words,
      ground: z.enum(grounds),
      known: z.enum(['read', 'recalled']),
      edition: z.optional(words),
    }),
  ),
  sources: z.optional(z.record(words, sourceShape)),
  changes: z.array(anything),
})
