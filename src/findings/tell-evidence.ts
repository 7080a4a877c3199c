import type { Answer } from '../facts/index.js'
import type { LeafField, Thing } from '../model/index.js'
import { allLeaves, spokenOperators, type Judged, type JudgedLeaf } from '../rulebook/index.js'
import { compareNumbers, printIn, printQuantity, type QuantityName, type UnitSystem } from '../units/index.js'
import { printAnswer, printBeside } from './print-answer.js'
import type { Evidence } from './report.js'

/** Every comparison of a judged condition as evidence. */
export function tellEvidence(
  judged: Judged,
  part: Evidence['part'],
  subject: Thing,
  system: UnitSystem,
): readonly Evidence[] {
  return allLeaves(judged).map((leaf) => ({ part, ...tellLeaf(leaf, subject, system) }))
}

function tellLeaf(
  { leaf, left, right, truth }: JudgedLeaf,
  subject: Thing,
  system: UnitSystem,
): Omit<Evidence, 'part'> {
  const { type, path } = leaf.fact
  const first = right[0]
  const [value, limit] =
    first === undefined || right.length > 1
      ? [printAnswer(left, type, system), right.map((one) => printAnswer(one, type, system)).join(' and ')]
      : printBeside(left, first, type, system)
  const margin = marginOf({ leaf, left, right, truth, type: 'leaf' }, system)
  const { entry } = left
  return {
    fact: path,
    subject: subject.id,
    result: truth === 1 ? 'holds' : truth === -1 ? 'does not hold' : 'cannot be told',
    ...(value === undefined ? {} : { value }),
    ...(entry === undefined ? {} : { written: entry.text }),
    ...(left.state === 'number' ? { si: { low: left.low, high: left.high } } : {}),
    operator: spokenOperators[leaf.operator] || 'is',
    ...(limit === undefined ? {} : { demanded: limit }),
    ...(margin === undefined ? {} : { margin: margin.text }),
    standing: standingOf(left),
    ...(entry?.how === undefined ? {} : { how: entry.how }),
    ...proofOf(left, subject),
    ...(entry?.equipment === undefined ? {} : { equipment: entry.equipment }),
  }
}

/** Photos and papers of the value; those of the thing as a whole cover its own values. */
function proofOf({ entry }: Answer, subject: Thing): Pick<Evidence, 'proof'> {
  if (entry === undefined) return {}
  const own = subject.pointer !== '' && entry.pointer.startsWith(`${subject.pointer}/`) ? subject.evidence : []
  const proof = [...new Set([...entry.evidence, ...own])]
  return proof.length === 0 ? {} : { proof }
}

function standingOf(answer: Answer): Evidence['standing'] {
  if (answer.assumed) return 'assumed'
  return answer.stated ? 'stated, not traced' : 'stated'
}

export interface Margin {
  /** Relative to the limit, so that demands of one rule can be ranked. */
  readonly share: number
  readonly text: string
}

const differences: Partial<Record<QuantityName, QuantityName>> = { temperature: 'temperatureDifference' }

/** How far a quantity is inside (positive) or outside (negative) its limit. */
export function marginOf({ leaf, left, right }: JudgedLeaf, system: UnitSystem): Margin | undefined {
  const limit = right[0]
  const type: LeafField = leaf.fact.type
  if (
    type.type !== 'quantity' ||
    type.quantity === 'date' ||
    left.state !== 'number' ||
    limit?.state !== 'number' ||
    right.length !== 1
  )
    return undefined
  const upward = leaf.operator === 'atLeast' || leaf.operator === 'moreThan'
  const downward = leaf.operator === 'atMost' || leaf.operator === 'lessThan'
  if (!upward && !downward) return undefined
  const margin = upward ? left.low - limit.high : limit.low - left.high
  if (!Number.isFinite(margin)) return undefined
  const quantity = differences[type.quantity] ?? type.quantity
  const sign = compareNumbers(left.low, limit.low) === 0 ? '' : margin < 0 ? '-' : '+'
  const reference = Math.abs(limit.low) > 0 ? Math.abs(limit.low) : 1
  return { share: margin / reference, text: `${sign}${printMargin(Math.abs(margin), limit.low, quantity, system)}` }
}

/** In the unit that the limit is printed in, so that the two can be added in the head. */
function printMargin(margin: number, limit: number, quantity: QuantityName, system: UnitSystem): string {
  if (quantity !== 'length') return printQuantity(margin, quantity, system)
  const [, unit] = /^[\d.,]+ (ft|in)$/.exec(printQuantity(Math.abs(limit), quantity, system)) ?? []
  return unit === undefined ? printQuantity(margin, quantity, system) : printIn(margin, quantity, unit, 1)
}
