import { isMap, nearestIn, problemList, textOf, type Problem, type ProblemList, type Steps } from '../model/index.js'
import { parseQuantity } from '../units/index.js'
import type { Catalogue } from '../facts/index.js'
import { checkShape } from './check-shape.js'
import type { Condition } from './condition.js'
import { allOf, effectiveCondition, type Overlay } from './overlay.js'
import { checkText } from './placeholders.js'
import { readCondition } from './read-condition.js'
import { checkBasis, readMeasure, readRequirement, readRule, valueReading } from './read-rule.js'
import {
  addChangeShape,
  demandChangeShape,
  exemptChangeShape,
  overlayShape,
  type BasisData,
  type DemandChangeData,
  type EffectiveData,
  type ExemptChangeData,
  type OverlayData,
  type RuleData,
  type SourceData,
} from './rule-shape.js'
import type { Authority, Effective, Rule } from './rule.js'
import type { ValueReading } from './value.js'

export interface OverlayReading {
  readonly catalogue: Catalogue
  readonly sources: ReadonlyMap<string, SourceData>
  readonly rules: ReadonlyMap<string, Rule>
  /** Rule data as written, for the measure of a rule. */
  readonly data: ReadonlyMap<string, unknown>
  readonly file: string
}

export interface OverlayRead {
  readonly overlay?: Overlay
  readonly problems: readonly Problem[]
  readonly warnings: readonly Problem[]
}

/** Reads and compiles one authority's file against the rules of the rule sets. */
export function readOverlay(raw: unknown, reading: OverlayReading): OverlayRead {
  const problems = problemList()
  const warnings = problemList()
  const data = checkShape(overlayShape, raw, [], problems)
  const overlay = data === undefined ? undefined : compileOverlay(data, { ...reading, problems, warnings })
  const named = (found: readonly Problem[]): readonly Problem[] => found.map((problem) => ({ ...problem, file: problem.file ?? reading.file }))
  return { ...(overlay === undefined || problems.found.length > 0 ? {} : { overlay }), problems: named(problems.found), warnings: named(warnings.found) }
}

interface Compiling extends OverlayReading {
  readonly problems: ProblemList
  readonly warnings: ProblemList
}

interface Found {
  readonly demands: Overlay['demands'][number][]
  readonly exemptions: Overlay['exemptions'][number][]
  readonly added: Rule[]
}

const verbs = ['demand', 'exempt', 'add'] as const

function compileOverlay(data: OverlayData, compiling: Compiling): Overlay {
  const authority = authorityOf(data)
  const sources = new Map([...compiling.sources, ...Object.entries(data.sources ?? {})])
  const found: Found = { demands: [], exemptions: [], added: [] }
  for (const [index, change] of data.changes.entries()) compileChange(change, { data, authority, found, steps: ['changes', index], compiling: { ...compiling, sources } })
  const ids = found.demands.map(({ rule, demand }) => `${rule} ${demand.id}`)
  for (const [index, id] of ids.entries()) {
    if (ids.indexOf(id) !== index) compiling.problems.add('duplicate-id', ['changes'], `A second demand on one rule has an id of its own: ${id.replace(' ', ', demand ')}.`, { nearest: 'id' })
  }
  return Object.freeze({ id: data.overlay, authority, ...found })
}

function authorityOf({ overlay, authority, written }: OverlayData): Authority {
  return Object.freeze({
    id: overlay,
    name: authority.name,
    layer: authority.layer,
    official: written.official === 'true' || written.official === 'yes',
    writtenBy: written.by,
    ...(written.reviewedBy === undefined ? {} : { reviewedBy: written.reviewedBy }),
    ...(written.lastVerified === undefined ? {} : { lastVerified: written.lastVerified }),
  })
}

interface Change {
  readonly data: OverlayData
  readonly authority: Authority
  readonly found: Found
  readonly steps: Steps
  readonly compiling: Compiling
}

/** The verb decides which shape is meant, so that a typo is told as a typo. */
function compileChange(raw: unknown, change: Change): undefined {
  const { steps, compiling } = change
  const keys = isMap(raw) ? Object.keys(raw) : []
  const said = verbs.filter((verb) => keys.includes(verb))
  if (said.length !== 1) {
    const near = keys.map((key) => nearestIn(key, verbs)).find(({ nearest }) => nearest !== undefined) ?? {}
    return compiling.problems.add('no-verb', steps, 'A change has one of the three verbs demand, exempt, add.', near)
  }
  if (said[0] === 'demand') return compileDemandChange(raw, change)
  return said[0] === 'exempt' ? compileExempt(raw, change) : compileAdd(raw, change)
}

interface Target {
  readonly rule: Rule
  readonly ruleData: Pick<RuleData, 'measure'>
  readonly values: ValueReading
}

function targetOf(id: string, at: Steps, { compiling }: Change): Target | undefined {
  const rule = compiling.rules.get(id)
  if (rule === undefined) return compiling.problems.add('unknown-rule', at, `There is no rule "${id}".`, { received: id, ...nearestIn(id, compiling.rules.keys()) })
  const raw = compiling.data.get(id)
  const measure = isMap(raw) && isMap(raw.measure) ? { fact: textOf(raw.measure.fact) ?? '', operator: textOf(raw.measure.operator) ?? '' } : undefined
  return { rule, ruleData: { measure }, values: valueReading(rule.subject, compiling.catalogue, compiling.problems) }
}

function compileDemandChange(raw: unknown, change: Change): undefined {
  const { compiling, steps, data, authority, found } = change
  const written = checkShape(demandChangeShape, raw, steps, compiling.problems)
  const target = written && targetOf(written.demand, [...steps, 'demand'], change)
  if (written === undefined || target === undefined) return undefined
  const { values, rule } = target
  const measure = target.ruleData.measure && readMeasure(target.ruleData.measure, values)
  const when = written.when === undefined ? undefined : readCondition(written.when, [...steps, 'when'], values)
  const require = readRequirement(written, { measure, values, steps })
  const basis = basisOf(written, data)
  checkBasis(basis, written.severity, written.nature, { steps, sources: compiling.sources, problems: compiling.problems })
  if (written.clause === undefined && written.nature !== 'verbal-habit') compiling.problems.add('no-citation', steps, 'A demand cites its clause, unless it is a verbal habit.', { nearest: 'clause' })
  if (written.say !== undefined) checkText(written.say, [...steps, 'say'], values)
  const applies = appliesOf(written.effective, rule.subject, change, values)
  if (require === undefined) return undefined
  found.demands.push({
    rule: rule.id,
    demand: Object.freeze({
      id: `${authority.id}${written.id === undefined ? '' : `/${written.id}`}`,
      severity: written.severity,
      authority,
      nature: written.nature,
      ...(applies === undefined ? {} : { applies }),
      ...(written.effective === undefined ? {} : { effective: effectiveOf(written.effective) }),
      ...(when === undefined ? {} : { when }),
      require,
      exemptions: [],
      locked: false,
      ...(written.proof === undefined ? {} : { proof: written.proof }),
      basis,
      ...(written.say === undefined ? {} : { say: written.say }),
      ...(written.because === undefined ? {} : { because: written.because }),
    }),
  })
}

function effectiveOf({ from, until, by }: EffectiveData): Effective {
  return { by, ...(from === undefined ? {} : { from }), ...(until === undefined ? {} : { until }) }
}

function basisOf(written: Pick<DemandChangeData, 'basis' | 'clause' | 'edition'>, data: OverlayData): readonly BasisData[] {
  if (written.basis !== undefined) return written.basis
  if (data.basis === undefined) return []
  const { source, ground, known, edition } = data.basis
  const own = written.edition ?? edition
  return [{ source, ground, known, ...(written.clause === undefined ? {} : { clause: written.clause }), ...(own === undefined ? {} : { edition: own }) }]
}

/** The authority is named, and the dates fit. */
function appliesOf(effective: EffectiveData | undefined, subject: string, change: Change, values: ValueReading): Condition | undefined {
  const { steps, compiling, authority } = change
  if (effective !== undefined) checkDates(effective, [...steps, 'effective'], compiling)
  const named = readCondition({ 'jurisdiction.authorities': { includes: authority.id } }, steps, values)
  const dates = effective === undefined ? undefined : effectiveCondition(effectiveOf(effective), subject)
  return allOf([named, dates === undefined ? undefined : readCondition(dates, [...steps, 'effective'], values)])
}

function checkDates({ from, until }: EffectiveData, steps: Steps, { problems, warnings }: Compiling): undefined {
  if (from === undefined && until === undefined) return problems.add('missing-key', steps, 'Dates have a beginning or an end.', { nearest: 'from' })
  const [start, end] = [from, until].map((day) => (day === undefined ? undefined : parseQuantity(day, 'date')))
  if (start?.ok === true && end?.ok === true && end.low <= start.low) warnings.add('never-applies', steps, `From ${from ?? ''} until ${until ?? ''} there is no day; this change never applies.`)
}

function compileExempt(raw: unknown, change: Change): undefined {
  const { compiling, steps, authority, found } = change
  const { problems, warnings } = compiling
  const written = checkShape<ExemptChangeData>(exemptChangeShape, raw, steps, problems)
  const target = written && targetOf(written.exempt, [...steps, 'exempt'], change)
  if (written === undefined || target === undefined) return undefined
  const { clause } = written
  if (clause === undefined) return problems.add('no-citation', steps, 'Taking a demand away needs a citation.', { nearest: 'clause' })
  for (const [index, id] of (written.of ?? []).entries()) checkExempted(id, { target, steps: [...steps, 'of', index], problems, authority })
  if (written.of === undefined && target.rule.demands.every((demand) => demand.locked)) warnings.add('never-applies', steps, `Every demand of ${target.rule.id} is locked; this exemption never applies.`)
  const when = written.when === undefined ? undefined : readCondition(written.when, [...steps, 'when'], target.values)
  const applies = appliesOf(written.effective, target.rule.subject, change, target.values)
  const exemption = { authority, clause, ...(when === undefined ? {} : { when }), ...(applies === undefined ? {} : { applies }), ...(written.because === undefined ? {} : { because: written.because }) }
  found.exemptions.push({ rule: target.rule.id, ...(written.of === undefined ? {} : { of: written.of }), exemption: Object.freeze(exemption) })
}

function checkExempted(id: string, { target, steps, problems, authority }: { target: Target; steps: Steps; problems: ProblemList; authority: Authority }): undefined {
  const demand = target.rule.demands.find((one) => one.id === id)
  if (demand?.locked === true) return problems.add('locked-demand', steps, `The demand "${id}" is locked; nobody can exempt from it.`)
  if (demand !== undefined || id.split('/')[0] === authority.id) return undefined
  return problems.add('unknown-demand', steps, `${target.rule.id} has no demand "${id}".`, nearestIn(id, target.rule.demands.map((one) => one.id)))
}

function compileAdd(raw: unknown, change: Change): undefined {
  const { compiling, steps, authority, found, data } = change
  const written = checkShape(addChangeShape, raw, steps, compiling.problems)
  const added = written?.add
  if (written === undefined || !isMap(added)) return undefined
  const { id, ...rule } = added
  const name = textOf(id)
  if (name === undefined) return compiling.problems.add('no-id', [...steps, 'add'], 'An added rule has an id, such as fill/pressure-sign.', { nearest: 'id' })
  const read = readRule(`${data.overlay}/${name}`, rule, { catalogue: compiling.catalogue, sources: compiling.sources, authority, file: compiling.file })
  const under = (problem: Problem): Problem => ({ ...problem, pointer: `/${steps.join('/')}/add${problem.pointer}` })
  compiling.problems.found.push(...read.problems.map(under))
  compiling.warnings.found.push(...read.warnings.map(under))
  if (read.rule === undefined) return undefined
  const values = valueReading(read.rule.subject, compiling.catalogue, compiling.problems)
  const applies = appliesOf(written.effective, read.rule.subject, change, values)
  const demands = read.rule.demands.map((demand) => ({ ...demand, nature: written.nature, ...(applies === undefined ? {} : { applies }) }))
  if (written.nature === 'verbal-habit') for (const demand of demands) checkBasis(demand.basis, demand.severity, written.nature, { steps, sources: compiling.sources, problems: compiling.problems })
  found.added.push(Object.freeze({ ...read.rule, demands }))
}
