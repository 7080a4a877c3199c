import { fact, rebound, unknown, type Answer, type Context, type Missing } from '../../facts/index.js'
import { boiler, line, quantity, state as stateKind, zone } from '../../model/index.js'
import { printQuantity } from '../../units/index.js'
import { hydraulicsOf } from './hydraulics-of.js'
import type { StateFlows } from './state-flows.js'

type Solved = Extract<StateFlows, { readonly solved: true }>

/** Least water flow through the boiler in any declared state in which a pump runs. */
export const leastFlow = fact('leastFlow', {
  of: boiler,
  type: quantity('volumeFlow'),
  read: (context) =>
    overStates(context, {
      value: ({ flowThrough, solution }) => (solution.pumps.length === 0 ? undefined : flowThrough(context.subject.id)),
      choose: (values) => Math.min(...values),
      bound: (value) => [-Infinity, value],
      print: (value) => printQuantity(value, 'volumeFlow', context.installation.units),
    }),
})

/** Highest velocity in the line in any declared state. */
export const velocity = fact('velocity', {
  of: line,
  type: quantity('velocity'),
  read: (context) =>
    context.subject.medium === 'heatingWater'
      ? overStates(context, {
          value: ({ velocityIn }) => velocityIn(context.subject.id) ?? 0,
          choose: (values) => Math.max(...values),
          bound: (value) => [value, Infinity],
          print: (value) => printQuantity(value, 'velocity', context.installation.units),
        })
      : unknown(),
})

interface Question {
  readonly value: (state: Solved) => number | undefined
  readonly choose: (values: readonly number[]) => number
  /** What one state tells while others are open. */
  readonly bound: (value: number) => readonly [low: number, high: number]
  readonly print: (value: number) => string
}

/** A value over all declared states: settled where all are solved and none can be undeclared, else a bound. */
function overStates(context: Context, { value, choose, bound, print }: Question): Answer {
  const { states, more } = hydraulicsOf(context)
  const known = states.flatMap((state) => {
    const found = state.solved ? value(state) : undefined
    return found === undefined ? [] : [{ name: state.name, found }]
  })
  const missing = [...states.flatMap(whatIsMissing), ...(more ? [countOfStates] : [])]
  if (known.length === 0) return unknown({ missing: missing.length > 0 ? missing : [countOfStates] })
  const found = choose(known.map((each) => each.found))
  const [low, high] = missing.length === 0 ? [found, found] : bound(found)
  const witness = known.map((each) => `${each.name} ${print(each.found)}`)
  const assumed = states.some((state) => state.assumed)
  return { ...rebound([], low, high), witness, assumed, missing }
}

const countOfStates: Missing = { subject: stateKind.name, fact: 'count' }

function whatIsMissing(state: StateFlows): readonly Missing[] {
  if (state.solved) return []
  return state.missing.length > 0 ? state.missing : [{ subject: state.state.id, fact: 'open' }]
}

/** Flow that the zone gets, over its design flow, while every zone is open. */
export const flowShare = fact('flowShare', { of: zone, type: quantity('fraction'), read: readShare })

function readShare(context: Context): Answer {
  const { ask, find, listed, subject } = context
  const { things, more } = listed(zone)
  const valves = things.map((thing) => ask('valve', thing))
  const design = ask('designFlow')
  const own = ask('valve')
  const missing = [
    ...[...valves, design, own].flatMap((answer) => answer.missing),
    ...(more > 0 ? [{ subject: zone.name, fact: 'count' }] : []),
  ]
  if (missing.length > 0 || own.state !== 'word' || design.state !== 'number') return unknown({ missing })
  const names = valves.flatMap((valve) => (valve.state === 'word' ? [valve.word] : []))
  const { states, more: undeclared } = hydraulicsOf(context)
  const allOpen = states.find(({ state }) => {
    const open = ask('open', state)
    return open.state === 'list' && names.every((name) => open.members.includes(name))
  })
  if (allOpen === undefined) return unknown({ missing: [countOfStates] })
  const unsolved = whatIsMissing(allOpen)
  const flow = allOpen.solved && find(own.word) !== undefined ? allOpen.flowThrough(own.word) : undefined
  if (undeclared || flow === undefined)
    return unknown({ missing: unsolved.length > 0 ? unsolved : [{ subject: subject.id, fact: 'valve' }] })
  const print = (value: number): string => printQuantity(value, 'volumeFlow', context.installation.units)
  return {
    ...rebound([], flow / design.high, flow / design.low),
    witness: [`${allOpen.name} ${print(flow)} of ${print(design.low)}`],
    assumed: allOpen.assumed,
  }
}
