import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { boiler, type Thing } from '../model/index.js'
import { reachedThings } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { condensateOf, isNeutralizer } from './condensate-way.js'

/** Whether nothing else drains into the condensate of the boiler before it is neutralized: no relief valve, no softener, no cooling coil. Condensate of another appliance may. */
export const condensateAlone = defineCheck('condensateAlone', {
  of: boiler,
  answers: ['yes', 'no'],
  answerable: true,
  judge,
})

function judge({ subject, network }: Context): Answer {
  const untreated = reachedThings(network, condensateOf(subject), { crossing: true, things: isNeutralizer })
  const other = untreated.things.find((thing) => !carriesCondensate(thing))
  if (other !== undefined) {
    const turningPoint = { at: other.id, because: 'what it drains is no condensate' }
    return word('no', { witness: [other.id], turningPoint })
  }
  return untreated.open ? unknown({ missing: untreated.missing }) : word('yes')
}

/** Fittings of condensate, and whatever makes it: its other ports are of other media. */
function carriesCondensate({ kind }: Thing): boolean {
  return kind.ports.condensate === 'condensate' || kind.place === 'condensate'
}
