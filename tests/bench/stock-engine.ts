import { Engine, type NestedCondition } from 'json-rules-engine'
import type { Facts, View } from '../../src/facts/index.js'
import { demandsFor, plan, subjectsOf, viewFor } from '../../src/judging/index.js'
import type { Thing } from '../../src/model/index.js'
import type { Demand, Rule, Rulebook } from '../../src/rulebook/index.js'
import { stockCondition, type Obtain } from './stock-conditions.js'

/** The untouched engine with the conditions of our demands, made once for a rulebook. */
export interface StockBook {
  readonly demandOf: (demand: Demand) => StockDemand
}

interface StockDemand {
  readonly name: string
  readonly conditions: { readonly any: NestedCondition[] }
  readonly facts: ReadonlyMap<string, Obtain>
}

/** One question of the engine: a subject and the demands it is asked, in one view. */
export interface StockRun {
  readonly engine: Engine
  readonly subject: Thing
  readonly view: View
  readonly facts: ReadonlyMap<string, Obtain>
}

/** The implication "applies and when -> require" of every demand, as a host would write it for the engine. */
export function stockBook(rulebook: Rulebook): StockBook {
  const made = new Map(rulebook.rules.flatMap((rule) => rule.demands.map((demand) => [demand, stockDemand(rule, demand)] as const)))
  return {
    demandOf: (demand) => {
      const found = made.get(demand)
      if (found === undefined) throw new Error(`no such demand: ${demand.id}`)
      return found
    },
  }
}

function stockDemand(rule: Rule, demand: Demand): StockDemand {
  const facts = new Map<string, Obtain>()
  const whens = [demand.applies, rule.when, demand.when].filter((one) => one !== undefined)
  const released = demand.exemptions.map(({ applies, when }) => ({
    all: [applies, when].flatMap((one) => (one === undefined ? [] : [stockCondition(one, facts)])),
  }))
  const any = [
    ...whens.map((when) => ({ not: stockCondition(when, facts) })),
    ...released,
    stockCondition(demand.require, facts),
  ]
  return { name: `${rule.id}#${demand.id}`, conditions: { any }, facts }
}

/** An engine for each set of demands that some subject is asked, and the runs of one house. Engines are made before the clock starts. */
export function stockRuns(book: StockBook, rulebook: Rulebook, facts: Facts): readonly StockRun[] {
  const engines = new Map<string, Engine>()
  const asked = new Map<string, { readonly subject: Thing; readonly view: View; readonly demands: StockDemand[] }>()
  for (const { rule, demands } of plan(rulebook, facts)) {
    for (const one of subjectsOf(rule, facts)) {
      for (const demand of demandsFor(one, demands)) {
        const view = viewFor(facts, demand)
        const key = `${view === facts.strict ? 'strict' : 'whole'} ${one.subject.id}`
        const entry = asked.get(key) ?? { subject: one.subject, view, demands: [] }
        entry.demands.push(book.demandOf(demand))
        asked.set(key, entry)
      }
    }
  }
  return [...asked.values()].map(({ subject, view, demands }) => {
    const key = demands.map(({ name }) => name).join(' ')
    const engine = engines.get(key) ?? engineOf(demands)
    engines.set(key, engine)
    return { engine, subject, view, facts: new Map(demands.flatMap((demand) => [...demand.facts])) }
  })
}

function engineOf(demands: readonly StockDemand[]): Engine {
  const engine = new Engine([], { allowUndefinedFacts: true })
  for (const { name, conditions } of demands) engine.addRule({ name, conditions, event: { type: 'held' } })
  return engine
}

/** What the engine is given for one subject. */
export interface ReadyRun {
  readonly engine: Engine
  readonly values: Readonly<Record<string, unknown>>
}

/** Every value found beforehand: only the engine is measured. */
export function withValues(runs: readonly StockRun[]): readonly ReadyRun[] {
  return runs.map(({ engine, subject, view, facts }) => ({ engine, values: mapped(facts, (obtain) => obtain(view, subject)) }))
}

/** Every value found when the engine asks for it. */
export function withFacts(runs: readonly StockRun[]): readonly ReadyRun[] {
  return runs.map(({ engine, subject, view, facts }) => ({ engine, values: mapped(facts, (obtain) => () => obtain(view, subject)) }))
}

/** One run after another, since a stock engine loses overlapping ones. Gives how many demands hold. */
export async function runStock(runs: readonly ReadyRun[]): Promise<number> {
  let held = 0
  for (const { engine, values } of runs) held += (await engine.run({ ...values })).results.length
  return held
}

function mapped<A>(facts: ReadonlyMap<string, Obtain>, change: (obtain: Obtain) => A): Readonly<Record<string, A>> {
  return Object.fromEntries([...facts].map(([name, obtain]) => [name, change(obtain)]))
}
