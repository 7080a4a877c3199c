import { fact, unknown, word, type Answer } from '../facts/index.js'
import { radiantFloor, yesNo, zone, type Thing } from '../model/index.js'
import { uncounted } from './uncounted.js'

/** Whether a zone that melts snow feeds a radiant floor. A zone that is not listed, or whose emitters are not, may be one. */
export const meltsSnow = fact('meltsSnow', {
  of: radiantFloor,
  type: yesNo,
  read: ({ subject, ask, listed }) => {
    const { things, more } = listed(zone)
    const zones = things.map((thing) => ({ thing, emitters: ask('emitters', thing), use: ask('use', thing) }))
    const perhaps = zones.filter(({ emitters, use }) => mayFeed(emitters, subject) && mayMelt(use))
    const sure = perhaps.find(({ emitters, use }) => feeds(emitters, subject) && use.state === 'word')
    if (sure !== undefined) return word('yes', { witness: [sure.thing.id] })
    if (perhaps.length === 0 && more === 0) return word('no')
    const untold = perhaps.flatMap(({ emitters, use }) => [...emitters.missing, ...use.missing])
    return unknown({ missing: [...untold, ...uncounted(zone, more)] })
  },
})

function feeds(emitters: Answer, { id }: Thing): boolean {
  return emitters.state === 'list' && emitters.members.includes(id)
}

function mayFeed(emitters: Answer, floor: Thing): boolean {
  return emitters.state !== 'list' || !emitters.complete || feeds(emitters, floor)
}

function mayMelt(use: Answer): boolean {
  return use.state !== 'word' || use.word === 'snow-melt'
}
