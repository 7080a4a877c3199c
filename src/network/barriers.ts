import type { Thing } from '../model/index.js'
import type { Blocking } from './network-answer.js'
import type { Passage } from './passage.js'
import { eitherTold, type Told } from './told.js'

/** What a way is not allowed to pass. */
export interface Barriers {
  /** Nothing that can be shut, unless it is locked open. */
  readonly closing?: boolean
  /** Nothing that lets the medium through in one direction only. */
  readonly checking?: boolean
  /** Nothing that strains or reduces. */
  readonly restricting?: boolean
  /** Nothing that leads from one group of media into another: cold and hot drinking water are one group. */
  readonly crossing?: boolean
  /** No component and no line for which this holds. Where it cannot be told, the answer is the fact that would tell. */
  readonly things?: (thing: Thing) => Told
}

/** Whether a passage is barred. One that may not be there at all is never surely free. */
export function blocks(passage: Passage, barriers: Barriers): Told {
  return eitherTold(passage.unknown ?? false, bars(passage, barriers))
}

/** Whether a passage that is there is barred. */
export function bars(passage: Passage, { closing, checking, restricting, crossing, things }: Barriers): Told {
  if (crossing === true && passage.crosses) return true
  let told: Told = false
  if (closing === true) told = passage.closes
  if (checking === true) told = eitherTold(told, passage.checks)
  if (restricting === true) told = eitherTold(told, passage.restricts)
  if (things === undefined || passage.owner === undefined) return told
  return eitherTold(told, things(passage.owner))
}

/** Which of the barriers surely bars a passage. */
export function blockingOf(passage: Passage, barriers: Barriers): Blocking | undefined {
  if (barriers.crossing === true && passage.crosses) return 'crosses'
  if (barriers.closing === true && passage.closes === true) return 'closes'
  if (barriers.checking === true && passage.checks === true) return 'checks'
  if (barriers.restricting === true && passage.restricts === true) return 'restricts'
  return bars(passage, barriers) === true ? 'barred' : undefined
}
