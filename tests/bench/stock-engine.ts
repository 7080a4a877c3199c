import { Engine, type NestedCondition } from 'json-rules-engine'
import type { Facts, View } from '../../src/facts/index.js'
import { demandsFor, plan, subjectsOf, viewFor } from '../../src/judging/index.js'
import type { Thing } from '../../src/model/index.js'
import type { Demand, Rule, Rulebook } from '../../src/rulebook/index.js'
import { stockCondition, type Obtain } from './stock-conditions.js'

/** Our demands in the words of the untouched engine; an engine for each set of them is made once and kept. */
export interface StockBook {
  readonly rulebook: Rulebook
  readonly demands: ReadonlyMap<Demand, StockDemand>
  readonly engines: Map<string, Engine>
}

interface StockDemand {
  readonly name: string
  readonly conditions: { readonly any: NestedCondition[] }
  readonly facts: ReadonlyMap<string, Obtain>
}

/** What the engine is given for one subject in one view. */
export interface StockRun {
  readonly engine: Engine
  readonly values: Readonly<Record<string, unknown>>
}

export function openStockBook(rulebook: Rulebook): StockBook {
  const demands = rulebook.rules.flatMap((rule) => rule.demands.map((one) => [one, stockDemand(rule, one)] as const))
  return { rulebook, demands: new Map(demands), engines: new Map() }
}

/** One run for each subject and view. Values are found beforehand, or when the engine asks for them. */
export function stockRuns(book: StockBook, facts: Facts, found: 'before' | 'when asked'): readonly StockRun[] {
  return askedOf(book, facts).map(({ subject, view, demands }) => {
    const names = new Map(demands.flatMap((demand) => [...demand.facts]))
    const values = [...names].map(([name, obtain]) => {
      const value = (): unknown => obtain(view, subject)
      return [name, found === 'before' ? value() : value] as const
    })
    return { engine: engineFor(book, demands), values: Object.fromEntries(values) }
  })
}

/** One run after another, since a stock engine loses overlapping ones. Gives how many demands hold. */
export async function runStock(runs: readonly StockRun[]): Promise<number> {
  let held = 0
  for (const { engine, values } of runs) held += (await engine.run({ ...values })).results.length
  return held
}

/** The implication "applies and when -> require", as a host would write it. */
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

interface Asked {
  readonly subject: Thing
  readonly view: View
  readonly demands: StockDemand[]
}

/** Who is asked what, gathered by subject and view. */
function askedOf({ rulebook, demands }: StockBook, facts: Facts): readonly Asked[] {
  const asked = new Map<string, Asked>()
  for (const planned of plan(rulebook, facts)) {
    const due = subjectsOf(planned.rule, facts).flatMap((one) =>
      demandsFor(one, planned.demands).map((demand) => ({ subject: one.subject, demand })),
    )
    for (const { subject, demand } of due) {
      const view = viewFor(facts, demand)
      const key = `${view === facts.strict ? 'strict' : 'whole'} ${subject.id}`
      const entry = asked.get(key) ?? { subject, view, demands: [] }
      asked.set(key, entry)
      entry.demands.push(...[demands.get(demand)].filter((one) => one !== undefined))
    }
  }
  return [...asked.values()]
}

function engineFor({ engines }: StockBook, demands: readonly StockDemand[]): Engine {
  const key = demands.map(({ name }) => name).join(' ')
  const engine = engines.get(key) ?? new Engine([], { allowUndefinedFacts: true })
  if (!engines.has(key)) {
    for (const { name, conditions } of demands) engine.addRule({ name, conditions, event: { type: 'held' } })
    engines.set(key, engine)
  }
  return engine
}
