import type { Engine } from 'json-rules-engine'
import type { Verdict } from '../judging/index.js'
import type { Thing } from '../model/index.js'
import { announce, isHeard, type EngineEvent } from './announce.js'
import type { AskedRule } from './asked-rule.js'
import { verdictEvent, type CarriedRule } from './carried-rule.js'
import type { CheckAlmanac } from './check-almanac.js'
import { wordsOf } from './faults.js'
import { foldResult } from './fold-result.js'
import type { HostResult } from './host-result.js'
import { ruleResult } from './rule-result.js'
import { evaluate } from './undeclared.js'

/** One run with those who listen to it. */
export interface Telling {
  readonly engine: Engine
  readonly run: CheckAlmanac
  readonly onEvent: ((event: EngineEvent) => unknown) | undefined
}

/** Judges a rule of ours and puts its verdicts down before anybody hears of them. */
export async function tellVerdicts(rule: CarriedRule, telling: Telling): Promise<void> {
  const { run, engine, onEvent } = telling
  const verdicts = rule.judge(run.facts)
  run.putVerdicts(rule.id, verdicts)
  if (!isHeard(engine, onEvent)) return
  for (const verdict of verdicts) await tellVerdict(verdict, telling)
}

async function tellVerdict(verdict: Verdict, { engine, run, onEvent }: Telling): Promise<void> {
  const { rule, subject } = verdict
  const holds = verdict.type === 'judged' && (verdict.verdict === 'pass' || verdict.verdict === 'not-applicable')
  const event = { type: verdictEvent, params: { rule: rule.id, subject: subject.id, ...paramsOf(verdict) } }
  const result = ruleResult({ name: rule.id, event, priority: 1, conditions: { all: [] }, result: holds })
  await announce(
    engine,
    { rule: rule.id, subject: subject.id, holds, event, result, almanac: run.about(subject, rule.subject) },
    { onEvent, fault: (fault) => run.putFault(fault) },
  )
}

function paramsOf(verdict: Verdict): Readonly<Record<string, string>> {
  if (verdict.type === 'broken') return { verdict: 'broken', error: verdict.error }
  const { severity, couldBe } = verdict
  return {
    verdict: verdict.verdict,
    ...(severity === undefined ? {} : { severity }),
    ...(couldBe === undefined ? {} : { couldBe }),
  }
}

/** Asks a rule of the host's of everything it is about; what goes wrong with one thing leaves the others. */
export async function askEverywhere(rule: AskedRule, telling: Telling): Promise<void> {
  await Promise.all(telling.run.askedOf(rule).map((subject) => ask(rule, subject, telling)))
}

async function ask(rule: AskedRule, subject: Thing, { engine, run, onEvent }: Telling): Promise<void> {
  const almanac = run.about(subject, rule.of)
  const place = { rule: rule.name, subject: subject.id }
  try {
    const { conditions, event, priority, name } = (await evaluate(rule, almanac)).toJSON(false)
    const truth = foldResult(conditions)
    const holds = truth === 1
    run.putResult(rule, { ...place, result: spoken[truth], event, conditions })
    const result = ruleResult({ name, event, priority, conditions, result: holds })
    await announce(
      engine,
      { ...place, holds, event, result, almanac },
      { onEvent, own: holds ? rule.handlers.success : rule.handlers.failure, fault: (fault) => run.putFault(fault) },
    )
  } catch (reason) {
    run.putFault({ at: 'rule', ...place, message: wordsOf(reason) })
  }
}

const spoken = { '-1': 'does not hold', 0: 'cannot be told', 1: 'holds' } as const satisfies Readonly<
  Record<string, HostResult['result']>
>
