import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { fillValve, type Thing } from '../model/index.js'
import { reachesWithout } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { isBackflowDevice, isDrinkingWater } from './drinking-water.js'

/**
 * Where the backflow device stands on the ways from drinking water to the fill valve: `ahead` of it, `behind` it, or `missing`.
 *
 * A fill valve that drinking water does not come to at all has it ahead.
 */
export const backflowOrder = defineCheck('backflowOrder', {
  of: fillValve,
  answers: ['ahead', 'behind', 'missing'],
  answerable: true,
  judge,
})

function judge({ subject, network }: Context): Answer {
  const things = (thing: Thing): boolean => thing.id === subject.id || isBackflowDevice(thing)
  const unguarded = reachesWithout(network, { component: subject.id, port: 'in' }, isDrinkingWater, { things })
  const { witness, missing } = unguarded
  if (unguarded.truth === -1) return word('ahead', { witness })
  if (unguarded.truth === 0) return unknown({ witness, missing })
  const turningPoint = { at: subject.id, because: 'drinking water comes to it past no backflow device' }
  const onward = reachesWithout(network, { component: subject.id, port: 'out' }, isInletOfDevice, { things })
  if (onward.truth === 1)
    return word('behind', { witness: [...witness].reverse().concat(onward.witness), turningPoint })
  return onward.truth === -1
    ? word('missing', { witness, turningPoint })
    : unknown({ witness: onward.witness, missing: onward.missing })
}

function isInletOfDevice(thing: Thing, port: string): boolean {
  return port === 'in' && isBackflowDevice(thing)
}
