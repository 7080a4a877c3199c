import type { Thing } from '../../src/model/index.js'
import {
  everyWayPasses,
  reachedThings,
  reachesWithout,
  type Barriers,
  type Network,
  type Search,
  type Told,
} from '../../src/network/index.js'
import type { House } from './build.js'

export const isKind =
  (...names: readonly string[]) =>
  (thing: Thing): boolean =>
    names.includes(thing.kind.name)
export const water = { component: 'B1', medium: 'heatingWater' } as const

/** Whether a drain is of iron; where nobody said, its material is missing. */
export function isIronDrain(thing: Thing): Told {
  if (thing.kind.name !== 'drain') return false
  const value = thing.entries.material?.value
  return value?.type === 'word' ? value.word === 'iron' : { subject: thing.id, fact: 'material' }
}

/** A relief valve, and nothing but a plain way to it. */
export const reliefFrom = (network: Network, barriers: Search = { closing: true, checking: true, restricting: true }) =>
  reachesWithout(network, water, isKind('relief'), barriers)

const barrierSets: readonly Barriers[] = [
  {},
  { closing: true },
  { checking: true, crossing: true },
  { closing: true, checking: true, restricting: true },
  { things: isKind('tee', 'header') },
  { things: (thing) => (thing.kind.name === 'stopValve' ? lockedOpen(thing) : false) },
]

function lockedOpen(thing: Thing): Told {
  const value = thing.entries.locked?.value
  return value?.type === 'word' ? value.word === 'open' : { subject: thing.id, fact: 'locked' }
}

export const starts = [water, { component: 'B1', port: 'supply' }, { component: 'B1', port: 'condensate' }] as const
const targets: readonly { readonly is: (thing: Thing, port: string) => Told; readonly kinds: readonly string[] }[] = [
  { is: isKind('relief'), kinds: ['relief'] },
  { is: isKind('service'), kinds: ['service'] },
  { is: isIronDrain, kinds: ['drain'] },
  { is: (thing, port) => thing.kind.name === 'tee' && port === 'branch', kinds: ['tee'] },
]

/** All answers about a house that the laws compare: truths by question, and reached things. */
export function answersOf(network: Network, house: House) {
  const asked = starts.flatMap((from) =>
    targets.flatMap((target) => barrierSets.map((barriers) => ({ from, target, barriers }))),
  )
  const truths = asked.flatMap(({ from, target, barriers }) => {
    const allListed = target.kinds.every(
      (kind) => (house.counts?.[kind] ?? Infinity) <= house.parts.filter((part) => part.kind === kind).length,
    )
    const { things: _things, ...plain } = { ...barriers, allListed }
    const reaches = reachesWithout(network, from, target.is, { ...barriers, allListed })
    const passes = everyWayPasses(network, from, target.is, {
      ...plain,
      passes: isKind('pump', 'backflow', 'neutralizer'),
    })
    return [reaches.truth, passes.truth, passes.reached]
  })
  const reached = starts.flatMap((from) => barrierSets.map((barriers) => reachedThings(network, from, barriers)))
  return { truths, reached }
}
