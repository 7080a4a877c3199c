import type { Evidence, Finding } from '../findings/index.js'
import type { DemandVerdict } from '../judging/index.js'
import type { Severity } from '../rulebook/index.js'

/** Places in the words of the trade. */
export const spokenPlaces: Readonly<Record<Finding['subject']['place'], string>> = {
  gas: 'Gas',
  vent: 'Vent',
  boiler: 'Boiler',
  relief: 'Relief',
  fill: 'Fill and backflow',
  expansion: 'Expansion',
  hotWater: 'Hot water',
  condensate: 'Condensate',
  electrical: 'Electrical',
  alarms: 'Alarms',
  papers: 'Papers',
}

/** What a failed demand of each severity asks of the reader. */
export const failingHeadings: Readonly<Record<Severity, string>> = {
  stop: 'MUST FIX BEFORE FIRING',
  must: 'MUST FIX',
  should: 'SHOULD FIX',
  advice: 'ADVICE',
}

/** The same where it cannot be told whether a demand is met. */
export const openHeadings: Readonly<Record<Severity, string>> = {
  stop: 'CANNOT BE TOLD: DO NOT FIRE UNTIL KNOWN',
  must: 'CANNOT BE TOLD: MUST BE KNOWN',
  should: 'CANNOT BE TOLD: SHOULD BE KNOWN',
  advice: 'CANNOT BE TOLD: GOOD TO KNOW',
}

/** Verdicts in words, as headings of a page have them. */
export const verdictWords: Readonly<Record<DemandVerdict, string>> = {
  pass: 'HOLDS',
  fail: 'FAILS',
  undecided: 'CANNOT BE TOLD',
  'not-applicable': 'DOES NOT APPLY',
}

/** How a value came to be known. */
export const spokenWays: Readonly<Record<NonNullable<Evidence['how']>, string>> = {
  nameplate: 'from the nameplate',
  manual: 'from the manual',
  gauge: 'read on a gauge',
  measured: 'measured',
  drawing: 'from a drawing',
  owner: 'told by the owner',
  computed: 'computed',
}

/** A fact as people say it: `ventTermination.heightAboveGrade` asked of a vent termination is "height above grade". */
export function spokenFact(path: string, kind?: string): string {
  const own = kind !== undefined && path.startsWith(`${kind}.`) ? path.slice(kind.length + 1) : path
  return own
    .replaceAll('.', ' ')
    .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
    .toLowerCase()
}

/** "a, b and c". */
export function joined(words: readonly string[]): string {
  const last = words.at(-1) ?? ''
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`
}

export function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`
}
