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
const [boiler, supply, condensate] = starts

interface Question {
  readonly from: (typeof starts)[number]
  readonly target: (thing: Thing, port: string) => Told
  readonly kind: string
}

const questions: readonly Question[] = [
  { from: boiler, target: isKind('relief'), kind: 'relief' },
  { from: supply, target: isKind('service'), kind: 'service' },
  { from: boiler, target: (thing, port) => thing.kind.name === 'tee' && port === 'branch', kind: 'tee' },
  { from: condensate, target: isIronDrain, kind: 'drain' },
]

/** All answers about a house that the laws compare: truths by question, and reached things. */
export function answersOf(network: Network, house: House) {
  const asked = questions.flatMap((question) => barrierSets.map((barriers) => ({ ...question, barriers })))
  const truths = asked.flatMap(({ from, target, kind, barriers }) => {
    const search = { ...barriers, allListed: isAllListed(house, kind) }
    const reaches = reachesWithout(network, from, target, search)
    const passing = { ...search, passes: isKind('pump', 'backflow', 'neutralizer') }
    const passes = everyWayPasses(network, from, target, passing)
    return [reaches.truth, passes.truth, passes.reached]
  })
  const reached = starts.flatMap((from) => barrierSets.map((barriers) => reachedThings(network, from, barriers)))
  return { truths, reached }
}

function isAllListed({ counts = {}, parts, runs }: House, kind: string): boolean {
  const listed = parts.filter((part) => part.kind === kind).length
  return listed >= (counts[kind] ?? Infinity) || parts.length + runs.length >= (counts.all ?? Infinity)
}
