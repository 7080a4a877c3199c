import { fact, type Answer, type Context } from '../../facts/index.js'
import { boiler, quantity } from '../../model/index.js'
import { printQuantity } from '../../units/index.js'
import { overStates } from './over-states.js'

/** Greatest rise from return to supply in any declared state: its load over the flow through the boiler. */
export const greatestRise = fact('greatestRise', { of: boiler, type: quantity('temperatureDifference'), read })

function read(context: Context): Answer {
  const { ask, subject, installation } = context
  return overStates(context, {
    value: ({ state, flowThrough, solution, heatPerVolume }) => {
      const load = ask('load', state)
      const flow = solution.pumps.length === 0 ? undefined : flowThrough(subject.id)
      if (flow === undefined || load.state !== 'number' || load.low !== load.high) return undefined
      return load.low === 0 ? 0 : load.low / (heatPerVolume * flow)
    },
    needs: (state) => ask('load', state).missing,
    choose: (values) => Math.max(...values),
    bound: (value) => [value, Infinity],
    print: (value) => printQuantity(value, 'temperatureDifference', installation.units),
  })
}
