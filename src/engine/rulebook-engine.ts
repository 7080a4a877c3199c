import {
  Engine,
  Fact,
  Operator,
  OperatorDecorator,
  type Almanac,
  type Rule,
  type RuleProperties,
  type TopLevelCondition,
} from 'json-rules-engine'
import { writeReport, type Report } from '../findings/index.js'
import { problemList, type InstallationWritten } from '../model/index.js'
import type { Rulebook } from '../rulebook/index.js'
import { AskedRule } from './asked-rule.js'
import { CarriedRule } from './carried-rule.js'
import { CheckAlmanac } from './check-almanac.js'
import { wordsOf, type HostFault } from './faults.js'
import type { HostContent } from './host-content.js'
import type { HostResult } from './host-result.js'
import type { HostCondition, HostRule } from './host-rule.js'
import { prepare, type DocumentOptions } from './prepare.js'
import { readHostConditions, type HostReading } from './read-host-conditions.js'
import { readHostRule } from './read-host-rule.js'
import { refuseForeign } from './refuse-foreign.js'
import { askEverywhere, tellVerdicts, type Telling } from './run-rules.js'
import { contentOf, type RunsRules } from './undeclared.js'
import { UnusableHostContent } from './unusable-host-content.js'

/** What one check through the engine may be told. */
export interface EngineCheckOptions extends DocumentOptions {
  /** Told of every verdict and every result of the host's rules. */
  readonly onEvent?: Telling['onEvent']
  /** Ends the wait for what the host adds; our report is whole all the same. */
  readonly signal?: AbortSignal
}

/** What comes of a check through the engine. */
export interface EngineCheck {
  /** The same bytes as a check without the engine. */
  readonly report: Report
  /** Results of the host's rules: rules in the order they were added, things in the order of the document. */
  readonly host: readonly HostResult[]
  /** What went wrong in what the host adds. */
  readonly faults: readonly HostFault[]
}

/**
 * A rulebook on json-rules-engine. A host adds its own plain rules, facts, operators and listeners and checks any number
 * of documents, one after another or at the same time. Nothing that it adds changes or loses a verdict of the rulebook.
 *
 * Facts, operators and named conditions are added before the rules that use them. `DEBUG=json-rules-engine` makes the
 * stock engine print what the host's rules compare.
 *
 * @example
 * ```ts
 * const engine = new RulebookEngine(openRulebook({ ruleSets: [base] }))
 * engine.on('failure', (event, almanac, result) => note(result.name))
 * const { report, host, faults } = await engine.check({ installation: 1 })
 * ```
 */
export class RulebookEngine extends Engine implements RunsRules {
  readonly #rulebook: Rulebook
  readonly #carried: readonly CarriedRule[]
  readonly #telling = new WeakMap<Almanac, Telling>()

  /** @throws UnusableHostContent with every problem of what the host adds */
  constructor(
    rulebook: Rulebook,
    { hostFacts = {}, hostOperators = {}, hostConditions = {}, hostRules = [] }: HostContent = {},
  ) {
    super()
    this.#rulebook = rulebook
    this.#carried = rulebook.rules.map((rule) => new CarriedRule(rulebook, rule, this))
    for (const rule of this.#carried) super.addRule(rule)
    for (const [name, value] of Object.entries(hostFacts)) this.addFact(name, value)
    for (const [name, holds] of Object.entries(hostOperators)) this.addOperator(name, holds)
    for (const [name, condition] of Object.entries(hostConditions)) this.setCondition(name, condition)
    for (const rule of hostRules) this.addRule(rule)
  }

  /**
   * Checks a document under the rulebook and asks the rules of the host beside it.
   *
   * @throws UnreadableInstallation when the document cannot be read, with every problem
   */
  async check(document: InstallationWritten, options: EngineCheckOptions = {}): Promise<EngineCheck> {
    const prepared = prepare(document, this.#rulebook, options)
    const almanac = new CheckAlmanac(prepared.facts, [...contentOf(this).facts.values()])
    await this.#runAll(almanac, options)
    const verdicts = this.#carried.flatMap((rule) => almanac.verdictsOf(rule.id) ?? rule.judge(prepared.facts))
    const host = this.#asked().flatMap((rule) => almanac.resultsOf(rule))
    return { report: writeReport({ ...prepared, verdicts }, options), host, faults: almanac.faults }
  }

  /** Rules come to the engine by its own run only; each run keeps what it finds on its own almanac. */
  async evaluateRules(rules: readonly Rule[], almanac: Almanac): Promise<void> {
    const telling = this.#telling.get(almanac)
    if (telling === undefined) return
    await Promise.all(rules.map((rule) => carry(rule, telling)))
  }

  /** @throws UnusableHostContent */
  override addRule(rule: HostRule | RuleProperties): this {
    const taken = new Set(contentOf(this).rules.map((one) => one.name))
    super.addRule(new AskedRule(readHostRule(rule, { ...this.#reading(), taken })))
    return this
  }

  /** Takes out a rule of the host's. @throws TypeError for a rule of the rulebook */
  override removeRule(rule: Rule | string): boolean {
    const name = typeof rule === 'string' ? rule : rule.name
    if (this.#rulebook.rulesById.has(name))
      throw new TypeError(`"${name}" belongs to the rulebook; an overlay can exempt from it`)
    return super.removeRule(rule)
  }

  /** @throws TypeError always: a rule is taken out and added anew. */
  override updateRule(): never {
    throw new TypeError('take the rule out with removeRule and add the new one')
  }

  /** @throws UnusableHostContent for an instance of another copy, or for a name that facts of the rulebook have */
  override addFact<T>(fact: Fact<T> | string, value?: unknown, options?: ConstructorParameters<typeof Fact>[2]): this {
    refuseForeign(fact, Fact)
    const own = fact instanceof Fact ? fact : new Fact(fact, value, options)
    const [first = ''] = own.id.split('.')
    if (!this.#rulebook.model.kindsIn.has(first)) return super.addFact(own)
    throw new UnusableHostContent([
      {
        code: 'duplicate-id',
        pointer: `/${own.id}`,
        message: `A fact of ${first} comes from the document only; give "${own.id}" another name.`,
      },
    ])
  }

  /** @throws UnusableHostContent for an instance of another copy */
  override addOperator(operator: Operator | string, holds?: (fact: never, value: never) => boolean): void {
    refuseForeign(operator, Operator)
    const own =
      operator instanceof Operator
        ? operator
        : new Operator(operator, holds as (fact: unknown, value: unknown) => boolean)
    super.addOperator(own)
  }

  /** @throws UnusableHostContent for an instance of another copy */
  override addOperatorDecorator(
    decorator: OperatorDecorator | string,
    holds?: ConstructorParameters<typeof OperatorDecorator>[1],
  ): void {
    refuseForeign(decorator, OperatorDecorator)
    const own =
      decorator instanceof OperatorDecorator
        ? decorator
        : new OperatorDecorator(decorator, holds as ConstructorParameters<typeof OperatorDecorator>[1])
    super.addOperatorDecorator(own)
  }

  /** @throws UnusableHostContent */
  override setCondition(name: string, condition: HostCondition | TopLevelCondition): this {
    const problems = problemList()
    const read = readHostConditions(condition, [], { ...this.#reading(), problems })
    if (read === undefined)
      throw new UnusableHostContent(problems.found.map((problem) => ({ ...problem, file: `condition ${name}` })))
    return super.setCondition(name, read)
  }

  /** A check always runs to its end. @throws TypeError */
  override stop(): never {
    throw new TypeError('a check runs to its end; give it a signal to stop waiting for what the host adds')
  }

  /** @throws TypeError: documents are given to `check` */
  override run(): Promise<never> {
    return Promise.reject(new TypeError('give the document to check(); a bare run has nothing to judge'))
  }

  async #runAll(run: CheckAlmanac, { onEvent, signal }: EngineCheckOptions): Promise<void> {
    this.#telling.set(run, { engine: this, run, onEvent })
    try {
      await Promise.race([super.run({}, { almanac: run }), ...(signal === undefined ? [] : [ended(signal)])])
    } catch (reason) {
      run.putFault({ at: 'run', message: wordsOf(reason) })
    }
  }

  #asked(): readonly AskedRule[] {
    return contentOf(this).rules.filter((rule) => rule instanceof AskedRule)
  }

  #reading(): Omit<HostReading, 'of' | 'problems'> {
    const { operators, facts } = contentOf(this)
    return {
      catalogue: this.#rulebook.facts,
      hostFacts: new Set(facts.keys()),
      knowsOperator: (name) => Boolean(operators.get(name)),
      operatorNames: [...operators.operators.keys()],
    }
  }
}

async function carry(rule: Rule, telling: Telling): Promise<void> {
  if (rule instanceof CarriedRule) return tellVerdicts(rule, telling)
  if (rule instanceof AskedRule) return askEverywhere(rule, telling)
  telling.run.putFault({
    at: 'rule',
    rule: rule.name,
    message: 'it was not added through addRule, so nothing was asked of it',
  })
}

/** Rejects when the host's patience ends. */
function ended(signal: AbortSignal): Promise<never> {
  return new Promise((_, reject) => {
    const end = (): void =>
      reject(new Error('the wait for what the host adds was ended; results of its rules may be missing'))
    if (signal.aborted) end()
    else signal.addEventListener('abort', end, { once: true })
  })
}
