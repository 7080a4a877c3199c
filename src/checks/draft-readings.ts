import { fact, rebound, type Answer } from '../facts/index.js'
import { quantity, reading, waterHeater } from '../model/index.js'
import { uncounted } from './uncounted.js'

/** How many readings were taken at the draft hood of a water heater. One of which this, or its component, is not known may be one. */
export const draftReadings = fact('draftReadings', {
  of: waterHeater,
  type: quantity('count'),
  read: ({ subject, ask, listed }) => {
    const { things, more } = listed(reading)
    const readings = things
      .map((thing) => ({ id: thing.id, sample: ask('sample', thing), component: ask('component', thing) }))
      .filter(({ sample, component }) => mayBe(sample, 'draft-hood') && mayBe(component, subject.id))
    const sure = readings.filter(({ sample, component }) => sample.state === 'word' && component.state === 'word')
    const [low, high] = [sure.length, readings.length + more]
    const missing = [
      ...readings.flatMap(({ sample, component }) => [...sample.missing, ...component.missing]),
      ...uncounted(reading, more),
    ]
    return { ...rebound([], low, high), witness: sure.map(({ id }) => id), missing: low === high ? [] : missing }
  },
})

function mayBe(answer: Answer, wanted: string): boolean {
  return answer.state !== 'word' || answer.word === wanted
}
