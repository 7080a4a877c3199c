// One kind, one fact, two checks and one rule, by the contract that the base rules use themselves.
import {
  between,
  defineCheck,
  definePlugin,
  fact,
  kind,
  quantity,
  reference,
  unknown,
  word,
  yesNo,
} from 'hydronic-rulebook'
import { reachesWithout } from 'hydronic-rulebook/network'

/** A small tank from which a pump makes up antifreeze mix. */
const mixFeeder = kind('mixFeeder', {
  spoken: 'mix feeder',
  place: 'fill',
  ports: { out: 'heatingWater' },
  fields: {
    /** Mix it holds when full; gallons, above zero. */
    volume: quantity('volume'),
    /** Mix it held when somebody last looked; gallons, zero or more. */
    left: quantity('volume'),
    /** Whether it sounds an alarm when it runs low. */
    lowAlarm: yesNo,
    /** The space in which it stands. */
    space: reference('space'),
  },
})

/** How much mix the system has taken since the feeder was filled. */
const taken = fact('taken', {
  of: mixFeeder,
  type: quantity('volume'),
  read: ({ ask }) => {
    const [full, left] = [ask('volume'), ask('left')]
    if (full.state !== 'number' || left.state !== 'number') return unknown()
    return between(Math.max(0, full.low - left.high), Math.max(0, full.high - left.low))
  },
})

/** Whether somebody hears it run low: it has an alarm, and does not stand where nobody comes. */
const heard = defineCheck('heard', {
  of: mixFeeder,
  answers: ['yes', 'no'],
  answerable: true,
  judge: ({ ask, find }) => {
    const alarm = ask('lowAlarm')
    if (alarm.state === 'word' && alarm.word === 'no') return word('no')
    const space = ask('space')
    const room = space.state === 'word' ? find(space.word) : undefined
    const use = room === undefined ? unknown() : ask('use', room)
    if (alarm.state !== 'word' || use.state !== 'word') return unknown()
    return use.word === 'storage' ? word('no', { witness: [space.state === 'word' ? space.word : ''] }) : word('yes')
  },
})

/** Whether somebody can shut it off from every boiler: the way is walked along the drawn lines. */
const shutOff = defineCheck('shutOff', {
  of: mixFeeder,
  answers: ['yes', 'no'],
  answerable: true,
  judge: ({ subject, network, listed }) => {
    const from = { component: subject.id, port: 'out' }
    const search = { closing: true, crossing: true, allListed: listed('boiler').more === 0 }
    const free = reachesWithout(network, from, ({ kind }) => kind.name === 'boiler', search)
    const { truth, witness, missing, blockedBy } = free
    if (truth === 0) return unknown({ witness, missing })
    if (truth === 1) return word('no', { witness })
    const turningPoint = blockedBy === undefined ? undefined : { at: blockedBy, because: 'it can be shut' }
    return word('yes', { witness, turningPoint })
  },
})

const frame = { subject: 'mix-feeder/mixFeeder', from: 'start-up' }
const practice = [{ source: 'feeder-practice', ground: 'practice', known: 'recalled' }]

export const mixFeeders = definePlugin({
  name: 'mix-feeder',
  version: '1.0.0',
  contract: 1,
  kinds: [mixFeeder],
  facts: [taken],
  checks: [heard, shutOff],
  sources: { 'feeder-practice': { title: 'Practice with antifreeze feeders', family: 'none' } },
  rules: {
    'fill/feeder': {
      ...frame,
      title: 'A mix feeder is heard before it is empty, and loses little',
      demands: [
        {
          id: 'heard',
          severity: 'should',
          require: { 'mix-feeder/mixFeeder.mix-feeder/heard': 'yes' },
          say: 'Nobody hears {id} run low.',
          basis: practice,
        },
        {
          id: 'little',
          severity: 'should',
          require: { 'mix-feeder/mixFeeder.mix-feeder/taken': { atMost: '2 gal' } },
          say: 'The system took {mix-feeder/mixFeeder.mix-feeder/taken} from {id}; look for a leak.',
          basis: practice,
        },
        {
          id: 'open',
          severity: 'should',
          require: { 'mix-feeder/mixFeeder.mix-feeder/shutOff': 'no' },
          say: 'Somebody can shut {id} off, and the system runs dry unheard.',
          basis: practice,
        },
      ],
      say: { fail: '{id} is not right.' },
      because: 'A silent leak empties the feeder, and then the system runs dry.',
    },
  },
})
