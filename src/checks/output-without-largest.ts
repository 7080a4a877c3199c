import { atLeastZero, fact, rebound } from '../facts/index.js'
import { boiler, installation, quantity } from '../model/index.js'
import { uncounted } from './uncounted.js'

/** What the boilers can give together while the largest of them stands still. Boilers that are not listed can only add. */
export const outputWithoutLargest = fact('outputWithoutLargest', {
  of: installation,
  type: quantity('heatRate'),
  read: ({ ask, listed }) => {
    const { things, more } = listed(boiler)
    const outputs = things.map((thing) => ask('output', thing))
    const bounds = outputs.map(atLeastZero)
    const low = withoutLargest(bounds.map((one) => one.low))
    const high = more === 0 ? withoutLargest(bounds.map((one) => one.high)) : Infinity
    const answer = rebound(outputs, low, high)
    if (low === high) return { ...answer, missing: [] }
    return { ...answer, missing: [...answer.missing, ...uncounted(boiler, more)] }
  },
})

/** Growing any one of them never makes it less, so lowest values give the lowest answer. */
function withoutLargest(outputs: readonly number[]): number {
  return outputs
    .toSorted((one, other) => other - one)
    .slice(1)
    .reduce((sum, one) => sum + one, 0)
}
