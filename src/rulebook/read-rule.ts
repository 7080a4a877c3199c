import { resolveFact, type Catalogue, type ResolvedFact } from '../facts/index.js'
import { nearestIn, problemList, type Phase, type Problem, type ProblemList, type Steps } from '../model/index.js'
import { checkShape } from './check-shape.js'
import type { Condition, Leaf } from './condition.js'
import { readCondition, readLeaf, readOperator } from './read-condition.js'
import type { BasisData, DemandData, RuleData, SourceData } from './rule-data.js'
import { ruleShape } from './rule-shape.js'
import type { Authority, Demand, Rule } from './rule.js'
import { isBinding, type Nature, type Severity } from './severity.js'
import { checkPlaceholders } from './placeholders.js'
import type { ValueReading } from './value.js'

export interface RuleReading {
  readonly catalogue: Catalogue
  readonly sources: ReadonlyMap<string, SourceData>
  readonly authority: Authority
  /** What problems call the file. */
  readonly file: string
}

export interface RuleRead {
  readonly rule?: Rule
  readonly problems: readonly Problem[]
  readonly warnings: readonly Problem[]
}

/** Reads and compiles one rule. Each part is checked by itself, so that every mistake is told at once. */
export function readRule(id: string, raw: unknown, reading: RuleReading): RuleRead {
  const problems = problemList()
  const warnings = problemList()
  const data = checkShape(ruleShape, raw, [], problems)
  const rule = data === undefined ? undefined : compileRule(id, data, { ...reading, problems, warnings })
  const named = (found: readonly Problem[]): readonly Problem[] =>
    found.map((problem) => ({ ...problem, file: reading.file }))
  return {
    ...(rule === undefined || problems.found.length > 0 ? {} : { rule }),
    problems: named(problems.found),
    warnings: named(warnings.found),
  }
}

interface Compiling extends RuleReading {
  readonly problems: ProblemList
  readonly warnings: ProblemList
}

function compileRule(id: string, data: RuleData, compiling: Compiling): Rule | undefined {
  const { catalogue, problems, authority } = compiling
  const kinds = catalogue.model.kindsIn.get(data.subject)
  if (kinds === undefined)
    return problems.add(
      'unknown-kind',
      ['subject'],
      `There is no kind or family "${data.subject}".`,
      nearestIn(data.subject, catalogue.model.kindsIn.keys()),
    )
  const values = valueReading(data.subject, catalogue, problems)
  const when = data.when === undefined ? undefined : readCondition(data.when, ['when'], values)
  warnOfPlace(data.when, compiling.warnings)
  const measure = data.measure && readMeasure(data.measure, values)
  const demands = data.demands.flatMap(
    (demand, index) => compileDemand(demand, { measure, values, steps: ['demands', index], compiling }) ?? [],
  )
  reportTwice(
    data.demands.map((demand) => demand.id),
    problems,
  )
  checkPlaceholders(data, values)
  if (data.say === undefined && data.demands.some((demand) => demand.say === undefined))
    problems.add('missing-key', ['say'], '"say: { fail: ... }" is missing: the words of the finding.')
  const first = catalogue.model.kinds.get(kinds[0] ?? '')
  const texts = {
    ...(data.remedy === undefined ? {} : { remedy: data.remedy }),
    ...(data.caution === undefined ? {} : { caution: data.caution }),
  }
  return Object.freeze({
    id,
    title: data.title,
    subject: data.subject,
    kinds,
    place: first?.place ?? 'papers',
    from: data.from ?? firstPhase,
    ...(when === undefined ? {} : { when }),
    demands: demands.map((demand) => ({ ...demand, authority })),
    say: data.say?.fail ?? '',
    because: data.because,
    ...texts,
  })
}

const firstPhase: Phase = 'survey'

/** Resolves the facts that a rule of one subject may mention. */
export function valueReading(subject: string, catalogue: Catalogue, problems: ProblemList): ValueReading {
  const resolve = (path: string, steps: Steps): ResolvedFact | undefined => {
    const found = resolveFact(catalogue, subject, path)
    if (found.ok) return found.fact
    return problems.add('unknown-fact', steps, found.message, {
      received: path,
      ...(found.nearest === undefined ? {} : { nearest: found.nearest }),
    })
  }
  return { problems, resolve }
}

export type Measure = Pick<Leaf, 'fact' | 'operator'>

export function readMeasure(
  raw: { readonly fact: string; readonly operator: string },
  values: ValueReading,
): Measure | undefined {
  const fact = values.resolve(raw.fact, ['measure', 'fact'])
  const operator = readOperator(raw.operator, fact, ['measure', 'operator'], values)
  return fact && operator && { fact, operator }
}

export interface DemandPlace {
  readonly measure: Measure | undefined
  readonly values: ValueReading
  readonly steps: Steps
}

/** What is required: the demand's own condition, or the rule's measure with the demand's value. */
export function readRequirement(
  demand: { readonly value?: unknown; readonly require?: unknown },
  { measure, values, steps }: DemandPlace,
): Condition | undefined {
  const { problems } = values
  if (demand.require !== undefined && demand.value !== undefined)
    return problems.add('two-requirements', steps, 'A demand has a value or a requirement of its own, not both.')
  if (demand.require !== undefined) return readCondition(demand.require, [...steps, 'require'], values)
  if (demand.value === undefined)
    return problems.add(
      'missing-key',
      steps,
      "A demand gives a value for the rule's measure, or a requirement of its own.",
      { nearest: 'require' },
    )
  if (measure === undefined)
    return problems.add(
      'no-measure',
      [...steps, 'value'],
      'The rule names no measure that this value could be compared with.',
      { nearest: 'require' },
    )
  return readLeaf(measure, demand.value, [...steps, 'value'], values)
}

function compileDemand(
  data: DemandData,
  place: DemandPlace & { readonly compiling: Compiling },
): Omit<Demand, 'authority'> | undefined {
  const { values, steps, compiling } = place
  const when = data.when === undefined ? undefined : readCondition(data.when, [...steps, 'when'], values)
  const require = readRequirement(data, place)
  checkBasis(data.basis, data.severity, undefined, { steps, sources: compiling.sources, problems: compiling.problems })
  if (require === undefined) return undefined
  return Object.freeze({
    id: data.id,
    severity: data.severity,
    ...(when === undefined ? {} : { when }),
    require,
    exemptions: [],
    locked: data.locked !== undefined,
    ...(data.proof === undefined ? {} : { proof: data.proof }),
    basis: data.basis,
    ...(data.say === undefined ? {} : { say: data.say }),
  })
}

interface BasisPlace {
  readonly steps: Steps
  readonly sources: ReadonlyMap<string, SourceData>
  readonly problems: ProblemList
}

/** Severity follows the ground: habit and memory never fail a house. */
export function checkBasis(
  basis: readonly BasisData[],
  severity: Severity,
  nature: Nature | undefined,
  { steps, sources, problems }: BasisPlace,
): undefined {
  for (const [index, one] of basis.entries()) {
    if (!sources.has(one.source))
      problems.add(
        'unknown-source',
        [...steps, 'basis', index, 'source'],
        `There is no source "${one.source}".`,
        nearestIn(one.source, sources.keys()),
      )
  }
  if (nature === 'verbal-habit' && severity !== 'advice')
    problems.add('severity-above-ground', [...steps, 'severity'], 'A verbal habit is advice at most.', {
      received: severity,
      nearest: 'advice',
    })
  if (basis.length === 0)
    return problems.add('no-basis', steps, 'A demand says where it comes from.', { nearest: 'basis' })
  if (!isBinding(severity)) return
  if (basis.some((one) => one.ground !== 'practice' && one.known === 'read')) return
  const why = basis.every((one) => one.ground === 'practice')
    ? 'A demand that rests on practice alone is at most "should".'
    : 'A demand that rests on recalled text alone is at most "should".'
  problems.add('severity-above-ground', [...steps, 'severity'], why, { received: severity, nearest: 'should' })
}

function reportTwice(ids: readonly string[], problems: ProblemList): void {
  for (const [index, id] of ids.entries())
    if (ids.indexOf(id) !== index)
      problems.add('duplicate-id', ['demands', index, 'id'], `The rule has a demand "${id}" already.`)
}

/** What the base code wants only somewhere belongs into that demand, so that a town can still say "always". */
function warnOfPlace(raw: unknown, warnings: ProblemList): void {
  const text = JSON.stringify(raw ?? '')
  const place = /"(?:fact":")?((?:site|jurisdiction)\.[A-Za-z.]+)"/.exec(text)
  if (place?.[1] !== undefined)
    warnings.add(
      'place-in-when',
      ['when'],
      `"${place[1]}" in the rule's own "when" keeps towns from asking for more; put it into the demand.`,
    )
}
