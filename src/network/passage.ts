import type { Thing } from '../model/index.js'
import type { MissingFact, Told } from './told.js'

/** Where the medium goes from one port to another: along a line, or through a component. */
export interface Passage {
  /** The line, or the component passed through. Absent where nobody said what leads on. */
  readonly owner?: Thing
  /** Set when the passage only may be there: the fact that would tell. */
  readonly unknown?: MissingFact
  readonly closes: Told
  readonly checks: Told
  readonly restricts: Told
  /** It joins two groups of media, as a backflow preventer does. */
  readonly crosses: boolean
}

const plain = { closes: false, checks: false, restricts: false, crosses: false } as const

/** A piece of pipe between two ports. */
export const alongLine = (line: Thing): Passage => ({ ...plain, owner: line })
/** A way on that may be there: at an open end, or where a path says `unknown`. */
export const intoUnknown = (unknown: MissingFact, line?: Thing): Passage => ({
  ...plain,
  unknown,
  ...(line === undefined ? {} : { owner: line }),
})
/** A way between two groups of media, through a component that may be there unlisted. */
export const throughUnlisted = (kind: string): Passage => ({
  ...plain,
  unknown: { subject: kind, fact: 'count' },
  crosses: true,
})
