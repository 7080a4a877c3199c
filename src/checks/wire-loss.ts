import { fact, known, unknown, type Answer } from '../facts/index.js'
import { quantity, zoneValve } from '../model/index.js'
import { wireDrop, wireResistance } from '../sizing/index.js'

/** Voltage that is lost in the copper wires to a zone valve and back, when they are warm. */
export const wireLoss = fact('wireLoss', {
  of: zoneValve,
  type: quantity('voltage'),
  read: ({ subject, ask }) => {
    const asked = ['power', 'voltage', 'wireLength', 'wireGauge'].map((name) => ask(name))
    const [power, voltage, length, gauge] = asked.map(valueOf)
    const missing = asked.flatMap((answer) => answer.missing)
    if (power === undefined || voltage === undefined || length === undefined || gauge === undefined)
      return unknown({ missing })
    const wire = wireResistance({ gauge, temperature: 348.15, stranded: false })
    const drop = wire.sized && voltage > 0 && wireDrop({ resistance: wire.value, current: power / voltage, length })
    return drop && drop.sized
      ? known(drop.value, { assumed: asked.some(({ assumed }) => assumed) })
      : unknown({ missing: [{ subject: subject.id, fact: 'wireGauge' }] })
  },
})

function valueOf(answer: Answer): number | undefined {
  return answer.state === 'number' && answer.low === answer.high ? answer.low : undefined
}
