import type { Context, Missing } from '../facts/index.js'
import { reliefValve, type Thing } from '../model/index.js'

/** Relief valves by whether they protect the subject. */
export interface ProtectingReliefs {
  readonly sure: readonly Thing[]
  /** Listed, but what they protect is not known. */
  readonly possible: readonly Thing[]
  /** There may be others that are not listed. */
  readonly more: boolean
  /** What would tell. */
  readonly missing: readonly Missing[]
}

export function protectingReliefs({ subject, ask, listed }: Context): ProtectingReliefs {
  const { things, more } = listed(reliefValve)
  const asked = things.map((valve) => ({ valve, protects: ask('protects', valve) }))
  const possible = asked.filter(({ protects }) => protects.state !== 'word')
  const sure = asked.filter(({ protects }) => protects.state === 'word' && protects.word === subject.id)
  return {
    sure: sure.map(({ valve }) => valve),
    possible: possible.map(({ valve }) => valve),
    more: more > 0,
    missing: [...possible.flatMap(({ protects }) => protects.missing), ...(more > 0 ? [aReliefValve] : [])],
  }
}

/** The question how many relief valves there are. */
export const aReliefValve: Missing = { subject: reliefValve.name, fact: 'count' }
