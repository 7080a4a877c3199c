import { fact, unknown, type Context } from '../../facts/index.js'
import { boiler, installation, line, quantity, type Thing } from '../../model/index.js'
import { printQuantity } from '../../units/index.js'
import { hydraulicsOf } from './hydraulics-of.js'
import { overStates, type SolvedState } from './over-states.js'

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
      : unknown({ missing: [{ subject: context.subject.id, fact: 'velocity' }] }),
})

/** Highest velocity of heating water in any line in any declared state; the line where it runs is the witness. */
export const highestVelocity = fact('highestVelocity', {
  of: installation,
  type: quantity('velocity'),
  read: (context) => {
    const lines = context.listed(line).things.filter(({ medium }) => medium === 'heatingWater')
    const fastest = (state: SolvedState): number => Math.max(0, ...lines.map(({ id }) => state.velocityIn(id) ?? 0))
    const answer = overStates(context, {
      value: fastest,
      choose: (values) => Math.max(...values),
      bound: (value) => [value, Infinity],
      print: (value) => printQuantity(value, 'velocity', context.installation.units),
    })
    return { ...answer, witness: [...(answer.witness ?? []), ...fastestLine(context, lines)] }
  },
})

function fastestLine(context: Context, lines: readonly Thing[]): readonly string[] {
  const solved = hydraulicsOf(context).states.flatMap((state) => (state.solved ? [state] : []))
  const speedOf = ({ id }: Thing): number => Math.max(0, ...solved.map(({ velocityIn }) => velocityIn(id) ?? 0))
  const [first] = lines.toSorted((one, other) => speedOf(other) - speedOf(one))
  return first === undefined || solved.length === 0 ? [] : [`fastest in ${first.id}`]
}
