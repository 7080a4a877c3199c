import { boundsOf, fact, largestOf, unknown } from '../../facts/index.js'
import { boiler, installation, line, quantity } from '../../model/index.js'
import { printQuantity } from '../../units/index.js'
import { countOfStates, overStates } from './over-states.js'

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
  read: ({ ask, listed }) => {
    const lines = listed(line).things.filter(({ medium }) => medium === 'heatingWater')
    const speeds = lines.map((one) => ({ id: one.id, speed: ask(velocity, one) }))
    const [fastest] = speeds.toSorted((one, other) => boundsOf(other.speed).low - boundsOf(one.speed).low)
    if (fastest === undefined) return unknown({ missing: [countOfStates] })
    const witness = [...(fastest.speed.witness ?? []), `fastest in ${fastest.id}`]
    return { ...largestOf(speeds.map(({ speed }) => speed)), witness }
  },
})
