import type { Entry, QuantityName } from '../model/index.js'

/** A question still open: which fact of which thing, or how many there are of a kind. */
export interface Missing {
  /** Id of the thing; for a presence question the kind. */
  readonly subject: string
  /** Fact name as rules write it, or `count`. */
  readonly fact: string
}

/** Where on a way it is decided, for a person who walks it. */
export interface TurningPoint {
  /** Id of the thing, or one of its ports: `ISO1`. */
  readonly at: string
  /** What it does there, as a clause: `it can be shut`. */
  readonly because?: string
}

/** How an answer came about, told beside every state of it. */
export interface Trail {
  /** What would make it more definite. Empty for known answers. */
  readonly missing: readonly Missing[]
  /** Something assumed, or taken from a template, was used. */
  readonly assumed: boolean
  /** Taken from a stated answer instead of a drawing or a calculation. */
  readonly stated: boolean
  /** The way walked, or the terms added, in order. */
  readonly witness?: readonly string[] | undefined
  /** Where on the way walked it is decided. */
  readonly turningPoint?: TurningPoint | undefined
  /** The document's own words, for facts that are fields. */
  readonly entry?: Entry | undefined
}

/** What a fact says about one subject. */
export type Answer =
  | (Trail & { readonly state: 'number'; readonly low: number; readonly high: number })
  | (Trail & { readonly state: 'word'; readonly word: string })
  | (Trail & { readonly state: 'list'; readonly members: readonly string[]; readonly complete: boolean })
  | (Trail & { readonly state: 'unknown' })

const nothing: readonly Missing[] = []

// Every answer has the same keys in the same order: thousands are made for one house, and engines are quicker with one shape.
const trailOf = ({
  missing = nothing,
  assumed = false,
  stated = false,
  witness,
  turningPoint,
  entry,
}: Partial<Trail>): Trail => ({
  missing,
  assumed,
  stated,
  witness,
  turningPoint,
  entry,
})

/** A number known exactly, in SI. */
export const known = (value: number, trail: Partial<Trail> = {}): Answer => between(value, value, trail)
/** A number known only to lie between two others, both included. */
export const between = (low: number, high: number, trail: Partial<Trail> = {}): Answer =>
  low === -Infinity && high === Infinity ? unknown(trail) : { state: 'number', low, high, ...trailOf(trail) }
/** A choice, a reference, or yes and no. */
export const word = (value: string, trail: Partial<Trail> = {}): Answer => ({
  state: 'word',
  word: value,
  ...trailOf(trail),
})
/** Several values; `complete` is false when there may be more. */
export const list = (members: readonly string[], complete: boolean, trail: Partial<Trail> = {}): Answer => ({
  state: 'list',
  members,
  complete,
  ...trailOf(trail),
})
/** Nothing can be told. */
export const unknown = (trail: Partial<Trail> = {}): Answer => ({ state: 'unknown', ...trailOf(trail) })

/** Whether nothing more could be learned about it. */
export function isSettled(answer: Answer): boolean {
  switch (answer.state) {
    case 'number':
      return answer.low === answer.high
    case 'word':
      return true
    case 'list':
      return answer.complete
    case 'unknown':
      return false
    default:
      return neverAnswer(answer)
  }
}

/** The bounds of a numeric answer; an unknown one may be anything. */
export function boundsOf(answer: Answer): { readonly low: number; readonly high: number } {
  return answer.state === 'number' ? answer : { low: -Infinity, high: Infinity }
}

function neverAnswer(answer: never): never {
  throw new TypeError(`no such answer: ${String(answer)}`)
}

export type { QuantityName }
