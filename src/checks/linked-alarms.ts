import { fact, rebound, type Answer, type Context, type Missing } from '../facts/index.js'
import { coAlarm, quantity, space } from '../model/index.js'
import { uncounted } from './uncounted.js'

/** How many carbon monoxide alarms of the space sound together with the others of the dwelling. An alarm of which this, or its place, is not known may be one. */
export const linkedAlarms = fact('linkedAlarms', { of: space, type: quantity('count'), read })

function read({ subject, listed, ask }: Context): Answer {
  const { things, more } = listed(coAlarm)
  const alarms = things.map((alarm) => {
    const [place, linked] = [ask('space', alarm), ask('interconnected', alarm)]
    return {
      id: alarm.id,
      here: isWord(place, subject.id),
      linked: isWord(linked, 'yes'),
      missing: [...place.missing, ...linked.missing],
    }
  })
  const sure = alarms.filter(({ here, linked }) => here === true && linked === true)
  const perhaps = alarms.filter(
    ({ here, linked }) => here !== false && linked !== false && !(here === true && linked === true),
  )
  const [low, high] = [sure.length, sure.length + perhaps.length + more]
  const missing: readonly Missing[] = [...perhaps.flatMap((alarm) => alarm.missing), ...uncounted(coAlarm, more)]
  return { ...rebound([], low, high), witness: sure.map(({ id }) => id), missing: low === high ? [] : missing }
}

function isWord(answer: Answer, wanted: string): boolean | undefined {
  return answer.state === 'word' ? answer.word === wanted : undefined
}
