import { unknown, word, type Answer, type Context, type FactHandle } from '../facts/index.js'
import { boiler, gasManifold, gasShutoff, gasTee, gasUnion, sedimentTrap, type KindSpec } from '../model/index.js'
import { reachesWithout } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { isOfKind } from './of-kind.js'
import { endsAt } from './ends-at.js'

/** Where the sediment trap stands on the gas pipe of the boiler alone: `behind-shutoff`, seen from the meter, `ahead-of-shutoff`, or `missing`. */
export const gasTrapPlace = placeOf('gasTrapPlace', sedimentTrap)

/** Where the union stands on the gas pipe of the boiler alone: `behind-shutoff`, seen from the meter, `ahead-of-shutoff`, or `missing`. */
export const gasUnionPlace = placeOf('gasUnionPlace', gasUnion)

function placeOf(name: string, sought: KindSpec): FactHandle {
  return defineCheck(name, {
    of: boiler,
    answers: ['behind-shutoff', 'ahead-of-shutoff', 'missing'],
    answerable: true,
    judge: (context) => judge(context, sought),
  })
}

/** The pipe is walked back from the boiler, up to the first branch. */
function judge({ subject, network }: Context, sought: KindSpec): Answer {
  const from = { component: subject.id, port: 'gas' }
  const isSought = isOfKind(sought)
  const behind = reachesWithout(network, from, isSought, { things: (thing) => isBranch(thing) || isShutoff(thing) })
  if (behind.truth === 1) return word('behind-shutoff', { witness: behind.witness })
  if (behind.truth === 0) return unknown({ witness: behind.witness, missing: behind.missing })
  const ahead = reachesWithout(network, from, isSought, { things: isBranch })
  if (ahead.truth === 1) return word('ahead-of-shutoff', endsAt(ahead.witness, 'it stands ahead of the shutoff'))
  return ahead.truth === -1 ? word('missing') : unknown({ witness: ahead.witness, missing: ahead.missing })
}

const isShutoff = isOfKind(gasShutoff)

const isBranch = isOfKind(gasTee, gasManifold)
