import { rebound, unknown, type Answer, type Context, type Missing } from '../../facts/index.js'
import { state as stateKind, type Thing } from '../../model/index.js'
import { hydraulicsOf } from './hydraulics-of.js'
import type { StateFlows } from './state-flows.js'

/** A state whose flows are known. */
export type SolvedState = Extract<StateFlows, { readonly solved: true }>

/** What is asked of the states of a house. */
export interface StateQuestion {
  readonly value: (state: SolvedState) => number | undefined
  /** What the value of a state lacks beside its flows. */
  readonly needs?: (state: Thing) => readonly Missing[]
  readonly choose: (values: readonly number[]) => number
  /** What one state tells while others are open. */
  readonly bound: (value: number) => readonly [low: number, high: number]
  readonly print: (value: number) => string
}

/** A value over all declared states: settled where all are solved and none can be undeclared, else a bound. */
export function overStates(context: Context, { value, needs, choose, bound, print }: StateQuestion): Answer {
  const { states, more } = hydraulicsOf(context)
  const known = states.flatMap((state) => {
    const found = state.solved ? value(state) : undefined
    return found === undefined ? [] : [{ name: state.name, found }]
  })
  const wanted = states.flatMap(({ state }) => needs?.(state) ?? [])
  const missing = [...states.flatMap(whatIsMissing), ...wanted, ...(more ? [countOfStates] : [])]
  if (known.length === 0) return unknown({ missing: missing.length > 0 ? missing : [countOfStates] })
  const found = choose(known.map((each) => each.found))
  const [low, high] = missing.length === 0 ? [found, found] : bound(found)
  const witness = known.map((each) => `${each.name} ${print(each.found)}`)
  const assumed = states.some((state) => state.assumed)
  return { ...rebound([], low, high), witness, assumed, missing }
}

/** The question how many states there are. */
export const countOfStates: Missing = { subject: stateKind.name, fact: 'count' }

/** What would let a state be solved. */
export function whatIsMissing(state: StateFlows): readonly Missing[] {
  if (state.solved) return []
  return state.missing.length > 0 ? state.missing : [{ subject: state.state.id, fact: 'open' }]
}
