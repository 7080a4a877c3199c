import type { Context } from '../../../facts/index.js'
import { zone, type Thing } from '../../../model/index.js'
import { balanceShare } from '../../../sizing/index.js'
import { printQuantity } from '../../../units/index.js'
import type { SolvedState } from '../../hydraulics/index.js'
import { sizeLine, type SizeLine } from '../size-line.js'
import { branchHead, streamsOf, type Streams } from './branch-head.js'

/**
 * What each zone through which water runs gets of its design flow, the head of its branch at the design flow, how much of that
 * is left to throttle, and the branch with the highest: the worst circuit.
 */
export function zoneLines(context: Context, flows: SolvedState): readonly SizeLine[] {
  const streams = streamsOf(flows)
  const branches = context.listed(zone).things.flatMap((one) => branchOf(context, streams, one))
  const whole = branches.flatMap(({ head, ...rest }) => (head === undefined ? [] : [{ ...rest, head }]))
  const [worst] = whole.toSorted((one, other) => other.head - one.head)
  const shares = branches.flatMap(({ share }) => share)
  if (worst === undefined || whole.length < branches.length || whole.length < 2) return shares
  return [
    ...shares,
    ...whole.flatMap(({ id, head }) => (id === worst.id ? [] : [throttled(flows, { id, head, worst: worst.head })])),
    {
      name: `worst circuit while ${flows.name}`,
      of: worst.id,
      state: 'told',
      text: `its branch takes ${printQuantity(worst.head, 'head', context.installation.units)} at its design flow, more than any other`,
    },
  ]
}

interface Branch {
  readonly id: string
  readonly share: readonly SizeLine[]
  /** m at the design flow; undefined where the flow of the zone is not known. */
  readonly head: number | undefined
}

function branchOf(context: Context, streams: Streams, one: Thing): readonly Branch[] {
  const { flows } = streams
  const valve = context.ask('valve', one)
  const flow = valve.state === 'word' ? flows.flowThrough(valve.word) : undefined
  if (valve.state !== 'word' || flow === undefined || flow === 0) return []
  const design = context.ask('designFlow', one)
  const share = sizeLine({ name: `share of its design flow while ${flows.name}`, of: one.id }, 'fraction', (take) =>
    balanceShare({ flow, designFlow: take.number(design) }),
  )
  const known = design.state === 'number' && design.low === design.high ? design.low : undefined
  const head = known === undefined ? undefined : branchHead(streams, valve.word, known)
  return [{ id: one.id, share: [share], head }]
}

interface Throttle {
  readonly id: string
  readonly head: number
  readonly worst: number
}

function throttled(flows: SolvedState, { id, head, worst }: Throttle): SizeLine {
  const value = worst - head
  return {
    name: `head to throttle at its design flow while ${flows.name}`,
    of: id,
    state: 'sized',
    quantity: 'head',
    value,
    working: [
      { name: 'head of the worst branch', value: worst, unit: 'm', readAs: 'head' },
      { name: 'head of this branch', value: head, unit: 'm', readAs: 'head' },
      { name: 'head to throttle', value, unit: 'm', readAs: 'head' },
    ],
    assumed: [...flows.taken, 'the branches leave and join at one place'],
    valid: true,
  }
}
