import type { Almanac, Engine, Fact, Rule, RuleResult } from 'json-rules-engine'

// What json-rules-engine 7.3.1 has and its declarations leave out. Every cast to it stands here, so that one file tells
// what to look at when its version moves.

/** A rule looks at the engine that it is added to. */
export interface TakesEngine {
  setEngine(engine: Engine): this
}

/** An engine judges the rules of one priority. */
export interface RunsRules {
  evaluateRules(rules: readonly Rule[], almanac: Almanac): Promise<unknown>
}

export type Listener = (...told: readonly unknown[]) => unknown

interface Content {
  readonly rules: readonly Rule[]
  readonly facts: ReadonlyMap<string, Fact>
  readonly operators: {
    /** Decorated names such as `everyFact:equal` included. */
    readonly get: (name: string) => unknown
    readonly operators: ReadonlyMap<string, unknown>
    readonly decorators: ReadonlyMap<string, unknown>
  }
  readonly listeners: (type: string) => readonly Listener[]
  readonly listenersAny: () => readonly Listener[]
}

/** What an engine holds, and who listens to it. */
export function contentOf(engine: Engine): Content {
  return engine as unknown as Content
}

/** Asks a stock rule. Throws at once or rejects where a fact, an operator or a named condition does. */
export function evaluate(rule: Rule, almanac: Almanac): Promise<RuleResult> {
  return (rule as unknown as { evaluate(almanac: Almanac): Promise<RuleResult> }).evaluate(almanac)
}
