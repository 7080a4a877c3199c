import { fact, rebound, unknown, type Answer, type Context } from '../../facts/index.js'
import { quantity, zone } from '../../model/index.js'
import { printQuantity } from '../../units/index.js'
import { hydraulicsOf } from './hydraulics-of.js'
import { countOfStates, whatIsMissing } from './over-states.js'
import { uncounted } from '../uncounted.js'

/** Flow that the zone gets, over its design flow, while every zone is open. */
export const flowShare = fact('flowShare', { of: zone, type: quantity('fraction'), read: readShare })

function readShare(context: Context): Answer {
  const { ask, find, listed, subject } = context
  const { things, more } = listed(zone)
  const valves = things.map((thing) => ask('valve', thing))
  const design = ask('designFlow')
  const own = ask('valve')
  const missing = [...[...valves, design, own].flatMap((answer) => answer.missing), ...uncounted(zone, more)]
  if (missing.length > 0 || own.state !== 'word' || design.state !== 'number') return unknown({ missing })
  const names = valves.flatMap((valve) => (valve.state === 'word' ? [valve.word] : []))
  const { states, more: undeclared } = hydraulicsOf(context)
  const allOpen = states.find(({ state }) => {
    const open = ask('open', state)
    return open.state === 'list' && names.every((name) => open.members.includes(name))
  })
  if (allOpen === undefined) return unknown({ missing: [countOfStates] })
  const unsolved = whatIsMissing(allOpen)
  const flow = allOpen.solved && find(own.word) !== undefined ? allOpen.flowThrough(own.word) : undefined
  if (undeclared || flow === undefined)
    return unknown({ missing: unsolved.length > 0 ? unsolved : [{ subject: subject.id, fact: 'valve' }] })
  const print = (value: number): string => printQuantity(value, 'volumeFlow', context.installation.units)
  return {
    ...rebound([], flow / design.high, flow / design.low),
    witness: [`${allOpen.name} ${print(flow)} of ${print(design.low)}`],
    assumed: allOpen.assumed,
  }
}
