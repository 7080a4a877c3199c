import { Rule, type Engine } from 'json-rules-engine'
import type { Facts } from '../facts/index.js'
import { judge, type Verdict } from '../judging/index.js'
import type { Rule as OurRule, Rulebook } from '../rulebook/index.js'
import type { TakesEngine } from './undeclared.js'

/** The one event type of our rules. */
export const verdictEvent = 'verdict'

/** One rule of a rulebook as a rule of json-rules-engine, judged by us and never by the stock engine. */
export class CarriedRule extends Rule implements TakesEngine {
  readonly id: string
  readonly #alone: Rulebook
  readonly #home: Engine

  constructor(rulebook: Rulebook, rule: OurRule, home: Engine) {
    super({ name: rule.id, conditions: { all: [] }, event: { type: verdictEvent } })
    this.id = rule.id
    this.#alone = { ...rulebook, rules: [rule] }
    this.#home = home
    // Another engine would copy the conditions into a rule of its own, where a missing fact can pass.
    Object.defineProperty(this, 'conditions', { get: refuseAbroad, enumerable: false })
  }

  /** Takes its own engine only: any other would ask the stock question and let missing facts pass. */
  setEngine(engine: Engine): this {
    return engine === this.#home ? this : refuseAbroad()
  }

  /** What it comes to for everybody it is asked of, in the order of a check without the engine. */
  judge(facts: Facts): readonly Verdict[] {
    return judge(this.#alone, facts)
  }
}

function refuseAbroad(): never {
  throw new TypeError('a rule of the rulebook is judged by its own engine only')
}
