import { fact, unknown } from '../../facts/index.js'
import { boiler, line, quantity } from '../../model/index.js'
import { printQuantity } from '../../units/index.js'
import { overStates } from './over-states.js'

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
