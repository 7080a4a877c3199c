import type { Context, Missing } from '../facts/index.js'
import { state } from '../model/index.js'

/** A state with what draws power in it. */
export interface NamedState {
  readonly name: string
  readonly energized: readonly string[]
}

interface DeclaredState extends NamedState {
  /** Whether the state is said to energize nothing else. */
  readonly complete: boolean
}

/** What a document says about states, with regard to some switched devices. */
export interface DeclaredStates {
  /** Each with what it surely energizes. */
  readonly states: readonly DeclaredState[]
  readonly switched: readonly string[]
  /** Not every state is declared. */
  readonly more: boolean
  readonly missing: readonly Missing[]
}

export function statesOf({ listed, ask }: Context, switched: readonly string[]): DeclaredStates {
  const { things, more } = listed(state)
  const asked = things.map((thing) => ({ name: thing.name ?? thing.id, energized: ask('energized', thing) }))
  const states = asked.map(({ name, energized }) =>
    energized.state === 'list'
      ? { name, energized: energized.members, complete: energized.complete }
      : { name, energized: [], complete: false },
  )
  const uncovered = switched.some((id) => !states.some((one) => one.energized.includes(id)))
  const count: readonly Missing[] = more > 0 || uncovered ? [{ subject: state.name, fact: 'count' }] : []
  return {
    states,
    switched,
    more: more > 0,
    missing: [...asked.flatMap(({ energized }) => energized.missing), ...count],
  }
}

/** The states with all that they may energize; where states may be missing, one that energizes everything. */
export function possibleStates({ states, switched, more }: DeclaredStates): readonly NamedState[] {
  if (more) return [{ name: 'all at once', energized: switched }]
  const uncovered = switched.filter((id) => !states.some((one) => one.energized.includes(id)))
  const stretched = states.map(({ name, energized, complete }) => ({
    name,
    energized: complete ? [...energized, ...uncovered] : switched,
  }))
  return stretched.length > 0 ? stretched : [{ name: 'no declared state', energized: uncovered }]
}
