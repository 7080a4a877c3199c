import type { ResolvedFact } from '../facts/index.js'
import { describe, nearestIn, type LeafField, type ProblemList, type QuantityName, type Steps } from '../model/index.js'
import { parseQuantity } from '../units/index.js'

/** Holds what a host compares with against the type of a fact of ours: stock operators compare anything with anything. */
export function checkHostValue(raw: unknown, fact: ResolvedFact, steps: Steps, problems: ProblemList): void {
  const values: readonly unknown[] = Array.isArray(raw) ? raw : [raw]
  for (const value of values) checkOne(value, fact, steps, problems)
}

function checkOne(value: unknown, { path, type }: ResolvedFact, steps: Steps, problems: ProblemList): void {
  const one = type.type === 'list' ? type.of : type
  if (one.type === 'quantity') return checkNumber(value, { path, quantity: one.quantity, steps, problems })
  if (typeof value !== 'string') return problems.add('wrong-shape', steps, `${path} is a word, not ${describe(value)}.`)
  checkChoice(value, one, steps, problems)
}

interface NumberPlace {
  readonly path: string
  readonly quantity: QuantityName
  readonly steps: Steps
  readonly problems: ProblemList
}

function checkNumber(value: unknown, { path, quantity, steps, problems }: NumberPlace): void {
  if (typeof value === 'number' && Number.isFinite(value)) return
  const parsed = typeof value === 'string' ? parseQuantity(value, quantity) : undefined
  const mend = parsed?.ok === true ? { nearest: String(parsed.low) } : {}
  problems.add('wrong-unit', steps, `${path} is compared with a plain number in SI, not ${describe(value)}.`, mend)
}

function checkChoice(value: string, type: LeafField, steps: Steps, problems: ProblemList): void {
  const known = type.type === 'choice' ? Object.keys(type.choices) : [value]
  if (!known.includes(value))
    problems.add('not-a-choice', steps, `"${value}" is not one of ${known.join(', ')}.`, nearestIn(value, known))
}
