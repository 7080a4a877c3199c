import { boundsOf, unknown, word, type Answer, type Context } from '../facts/index.js'
import {
  boiler,
  castIronBaseboard,
  castIronRadiator,
  expansionTank,
  line,
  panelRadiator,
  type PathItem,
  type Thing,
} from '../model/index.js'
import { reachesWithout, type PortReference, type Told } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { isOfKind } from './of-kind.js'
import { yesOrNo } from './yes-or-no.js'

/** Whether the line is of heating pipe that lets oxygen through and shares its water with iron or steel. */
export const oxygenReachesIron = defineCheck('oxygenReachesIron', {
  of: line,
  answers: ['yes', 'no'],
  answerable: true,
  judge,
})

function judge(context: Context): Answer {
  const { subject, ask, network } = context
  const none = boundsOf(ask('pipe.length'))
  if (subject.medium !== 'heatingWater' || none.high === 0) return word('no')
  const type = ask('pipe.type')
  if (type.state === 'word' && type.word !== 'pex') return word('no')
  if (type.state !== 'word') return unknown({ missing: type.missing })
  const start = subject.path?.flatMap(portOf)[0]
  if (start === undefined) return unknown({ missing: [{ subject: subject.id, fact: 'path' }] })
  const allListed = irons.every((kind) => context.listed(kind).more === 0)
  const iron = reachesWithout(network, start, (thing) => isIron(context, thing), { crossing: true, allListed })
  return yesOrNo(iron, 'oxygen from the pipe rusts it')
}

function portOf(item: PathItem): readonly PortReference[] {
  if (item.type === 'unknown') return []
  return [{ component: item.component, port: item.type === 'port' ? item.port : item.leave }]
}

const irons = [castIronRadiator, castIronBaseboard, panelRadiator, expansionTank, boiler]
const alwaysIron = isOfKind(castIronRadiator, castIronBaseboard, panelRadiator, expansionTank)

function isIron({ ask }: Context, thing: Thing): Told {
  if (alwaysIron(thing)) return true
  if (thing.kind.name !== boiler.name) return false
  const material = ask('heatExchangerMaterial', thing)
  if (material.state !== 'word') return { subject: thing.id, fact: 'heatExchangerMaterial' }
  return material.word === 'cast-iron' || material.word === 'steel'
}
