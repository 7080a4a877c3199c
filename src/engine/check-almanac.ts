import { Almanac, type Fact } from 'json-rules-engine'
import type { Facts } from '../facts/index.js'
import type { Verdict } from '../judging/index.js'
import type { Thing } from '../model/index.js'
import type { AskedRule } from './asked-rule.js'
import type { HostFault } from './faults.js'
import type { HostResult } from './host-result.js'
import { SubjectAlmanac } from './subject-almanac.js'

/** All that belongs to one run: verdicts, results of the host, faults. Only the engine sees it, so runs may overlap. */
export class CheckAlmanac extends Almanac {
  readonly facts: Facts
  readonly #hostFacts: readonly Fact[]
  readonly #verdicts = new Map<string, readonly Verdict[]>()
  readonly #results = new Map<AskedRule, Map<string, HostResult>>()
  readonly #faults: HostFault[] = []
  readonly #subjects = new Map<string, SubjectAlmanac>()

  constructor(facts: Facts, hostFacts: readonly Fact[]) {
    super()
    this.facts = facts
    this.#hostFacts = hostFacts
  }

  putVerdicts(rule: string, verdicts: readonly Verdict[]): void {
    this.#verdicts.set(rule, verdicts)
  }

  verdictsOf(rule: string): readonly Verdict[] | undefined {
    return this.#verdicts.get(rule)
  }

  putResult(rule: AskedRule, result: HostResult): void {
    const results = this.#results.get(rule) ?? new Map<string, HostResult>()
    this.#results.set(rule, results.set(result.subject, result))
  }

  /** In the order of the document, whenever they came in. */
  resultsOf(rule: AskedRule): readonly HostResult[] {
    return this.askedOf(rule).flatMap((subject) => this.#results.get(rule)?.get(subject.id) ?? [])
  }

  /** Everything listed that a rule of the host's is asked of. */
  askedOf(rule: AskedRule): readonly Thing[] {
    return rule.kinds.flatMap((kind) => this.facts.strict.installation.ofKind.get(kind) ?? [])
  }

  putFault(fault: HostFault): void {
    this.#faults.push(fault)
  }

  get faults(): readonly HostFault[] {
    return [...this.#faults]
  }

  /** The one almanac of a thing under a name, so that a fact of the host's is worked out once for it. */
  about(subject: Thing, of: string): SubjectAlmanac {
    const key = `${of} ${subject.id}`
    const before = this.#subjects.get(key)
    if (before !== undefined) return before
    const made = new SubjectAlmanac({ facts: this.facts, subject, of, hostFacts: this.#hostFacts })
    this.#subjects.set(key, made)
    return made
  }
}
