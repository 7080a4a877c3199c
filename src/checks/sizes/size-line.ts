import type { Answer, Listing, Missing } from '../../facts/index.js'
import type { BillBand, ReadAs, Sizing, Step } from '../../sizing/index.js'
import type { QuantityName } from '../../units/index.js'

/** What a line of a topic is about. */
export interface SizeHead {
  /** Such as `tank needed`. */
  readonly name: string
  /** Id of the thing that it is about. */
  readonly of?: string
  /** How people read it, where the quantity alone does not tell: condensate by the hour. */
  readonly readAs?: ReadAs
}

/** A number that a topic came to, or why there is none. */
export type SizeLine = SizeHead &
  (
    | {
        readonly state: 'sized'
        readonly quantity: QuantityName
        /** In SI. */
        readonly value: number
        readonly working: readonly Step[]
        readonly assumed: readonly string[]
        /** False when an input lies outside the range for which the method is published. */
        readonly valid: boolean
      }
    | {
        /** Known only to lie between two numbers, one of which may be without limit; nothing is missing where that is all the method can tell. */
        readonly state: 'bounded'
        readonly quantity: QuantityName
        /** In SI. */
        readonly low: number
        readonly high: number
        readonly missing: readonly Missing[]
        /** What was taken for granted; left out where that is nothing. */
        readonly assumed?: readonly string[]
      }
    | { readonly state: 'told'; readonly text: string }
    | { readonly state: 'open'; readonly missing: readonly Missing[] }
    | { readonly state: 'impossible'; readonly why: string }
  )

/** A sentence on why there are no words. */
export interface Untold {
  readonly why: string
}

/** Takes numbers out of answers; whatever has none, or may have more, is noted as missing. */
export interface Taking {
  readonly number: (answer: Answer) => number
  readonly word: (answer: Answer) => string
  /** Ids in a list that is complete. */
  readonly list: (answer: Answer) => readonly string[]
  /** Everything of a kind, where the count says that this is all. */
  readonly all: (kind: string, listing: Listing) => Listing['things']
  /** Notes what else is missing. */
  readonly note: (more: readonly Missing[]) => void
}

/**
 * A line from a calculation over what is known. Where a number is missing the line is open and names it; a number that cannot
 * be makes it impossible, in the words of the calculation.
 */
export function sizeLine(head: SizeHead, quantity: QuantityName, calculate: (take: Taking) => Sizing): SizeLine {
  const { take, missing, assumed } = openTaking()
  const result = calculate(take)
  if (missing.length > 0) return { ...head, state: 'open', missing: unique(missing) }
  if (!result.sized) return { ...head, state: 'impossible', why: result.why }
  const { value, working, valid } = result
  if (Number.isNaN(value)) return { ...head, state: 'impossible', why: 'No number comes of what is stated.' }
  return { ...head, state: 'sized', quantity, value, working, valid, assumed: [...result.assumed, ...assumed] }
}

interface Turned {
  readonly answer: Answer
  /** Grows with what is asked. */
  readonly turn: (value: number) => number
}

/** A line straight from one answer; where that is only bounded the line tells the bounds and what would tell more. */
export function boundLine(head: SizeHead, quantity: QuantityName, { answer, turn }: Turned): SizeLine {
  const { missing } = answer
  if (answer.state !== 'number') return { ...head, state: 'open', missing }
  const [low, high] = [turn(answer.low), turn(answer.high)]
  if (low !== high) return { ...head, state: 'bounded', quantity, low, high, missing }
  const assumed = answer.assumed ? [assumption] : []
  return { ...head, state: 'sized', quantity, value: low, working: [], valid: true, assumed }
}

/** A line of bounds from a calculation over what is known. */
export function spreadLine(
  head: SizeHead,
  quantity: QuantityName,
  { granted, calculate }: { readonly granted: readonly string[]; readonly calculate: (take: Taking) => BillBand },
): SizeLine {
  const { take, missing, assumed } = openTaking()
  const result = calculate(take)
  if (missing.length > 0) return { ...head, state: 'open', missing: unique(missing) }
  if (!result.banded) return { ...head, state: 'impossible', why: result.why }
  const { low, high } = result.band
  return { ...head, state: 'bounded', quantity, low, high, missing: [], assumed: [...granted, ...assumed] }
}

/** A line in words, from what is known; a number that cannot be makes it impossible. */
export function toldLine(head: SizeHead, tell: (take: Taking) => string | Untold): SizeLine {
  const { take, missing } = openTaking()
  const text = tell(take)
  if (missing.length > 0) return { ...head, state: 'open', missing: unique(missing) }
  return typeof text === 'string' ? { ...head, state: 'told', text } : { ...head, state: 'impossible', why: text.why }
}

/** Said of a line that takes a value which the document only assumes. */
export const assumption = 'a value that the document only assumes'

interface Open {
  readonly take: Taking
  readonly missing: Missing[]
  readonly assumed: string[]
}

function openTaking(): Open {
  const missing: Missing[] = []
  const assumed: string[] = []
  const note = (answer: Answer): void => {
    if (answer.assumed) assumed.push(assumption)
  }
  const gap = (answer: Answer): void => {
    missing.push(...answer.missing)
  }
  return {
    missing,
    assumed,
    take: {
      number: (answer) => {
        note(answer)
        if (answer.state === 'number' && answer.low === answer.high) return answer.low
        gap(answer)
        return NaN
      },
      word: (answer) => {
        note(answer)
        if (answer.state === 'word') return answer.word
        gap(answer)
        return ''
      },
      list: (answer) => {
        note(answer)
        if (answer.state === 'list' && answer.complete) return answer.members
        gap(answer)
        return []
      },
      all: (kind, { things, more }) => {
        if (more > 0) missing.push({ subject: kind, fact: 'count' })
        return things
      },
      note: (more) => {
        missing.push(...more)
      },
    },
  }
}

function unique(missing: readonly Missing[]): readonly Missing[] {
  return [...new Map(missing.map((one) => [`${one.subject} ${one.fact}`, one])).values()]
}
