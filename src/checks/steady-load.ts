import { atLeastZero, fact, rebound, type Answer } from '../facts/index.js'
import { installation, quantity, zone } from '../model/index.js'
import { uncounted } from './uncounted.js'

/** Heat that all zones need together at the outdoor design temperature, those left out that are dropped first when it is short. */
export const steadyLoad = fact('steadyLoad', {
  of: installation,
  type: quantity('heatRate'),
  read: ({ ask, listed }) => {
    const { things, more } = listed(zone)
    const zones = things
      .map((thing) => ({ load: ask('designLoad', thing), priority: ask('priority', thing) }))
      .filter(({ priority }) => wordOf(priority) !== 'shed-first')
    const bounds = zones.map(({ load, priority }) => ({ ...atLeastZero(load), stays: wordOf(priority) !== undefined }))
    const low = bounds.reduce((sum, one) => sum + (one.stays ? one.low : 0), 0)
    const high = more === 0 ? bounds.reduce((sum, one) => sum + one.high, 0) : Infinity
    const missing = [
      ...zones.flatMap(({ load, priority }) => [...load.missing, ...priority.missing]),
      ...uncounted(zone, more),
    ]
    return { ...rebound([], low, high), missing: low === high ? [] : missing }
  },
})

function wordOf(answer: Answer): string | undefined {
  return answer.state === 'word' ? answer.word : undefined
}
