import type { Context } from '../../facts/index.js'
import { site, zone, type Thing } from '../../model/index.js'
import { outdoorForReturn, resetReturn, resetSupply, type ResetDesign, type Sizing } from '../../sizing/index.js'
import { si } from '../../units/index.js'
import { askOnce } from '../ask-once.js'
import { chain, stated } from './chain.js'
import { air, designWater, ratingOf } from './emitter-water.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'

/** Supply and return over the season, by the first zone that states its design water. */
export function curveSizes(context: Context): readonly SizeLine[] {
  const first = firstDesigned(context)
  const warm = sizeLine(
    { name: 'outdoor temperature from which the return stays below 130 F' },
    'temperature',
    (take) => outdoorForReturn(designOfHouse(context, take), si('temperature', '130 F')),
  )
  if (first === undefined) return [warm]
  const curve = curveSteps.flatMap((share) => [
    sizeLine({ name: `supply at ${share.spoken}`, of: first.id }, 'temperature', (take) =>
      atShare(context, take, first, share.part, resetSupply),
    ),
    sizeLine({ name: `return at ${share.spoken}`, of: first.id }, 'temperature', (take) =>
      atShare(context, take, first, share.part, resetReturn),
    ),
  ])
  return [...curve, warm]
}

function firstDesigned({ ask, listed }: Context): Thing | undefined {
  return listed(zone).things.find((one) => {
    const emitters = ask('emitters', one)
    const empty = emitters.state === 'list' && emitters.complete && emitters.members.length === 0
    return !empty && ask('designSupply', one).state === 'number'
  })
}

/** Design water of the house: that of the first zone which states its own. */
export function designOfHouse(context: Context, take: Taking): ResetDesign {
  const first = firstDesigned(context)
  if (first !== undefined) return resetDesign(context, take, first)
  take.note([{ subject: zone.name, fact: 'designSupply' }])
  return { supply: NaN, return: NaN, room: NaN, balance: NaN, designOutdoor: NaN, exponent: NaN }
}

const curveSteps = [
  { spoken: 'the design temperature', part: 1 },
  { spoken: 'three quarters of the load', part: 0.75 },
  { spoken: 'half of the load', part: 0.5 },
  { spoken: 'a quarter of the load', part: 0.25 },
] as const

function atShare(
  context: Context,
  take: Taking,
  of: Thing,
  part: number,
  curve: (design: ResetDesign, outdoor: number) => Sizing,
): Sizing {
  const design = resetDesign(context, take, of)
  const outdoor = design.balance - part * (design.balance - design.designOutdoor)
  return chain(stated('outdoors', outdoor, 'K'), () => curve(design, outdoor))
}

function resetDesign(context: Context, take: Taking, of: Thing): ResetDesign {
  const { supply, back } = designWater(context, take, of)
  const emitters = take.list(context.ask('emitters', of)).flatMap((id) => context.find(id) ?? [])
  const one = emitters[0]
  const room = one === undefined ? NaN : air(context, take, one)
  const exponent = one === undefined ? NaN : ratingOf(context, take, one).exponent
  const designOutdoor = take.number(askOnce(context, site, 'outdoorDesign'))
  return { supply, return: back, room, balance: room, designOutdoor, exponent }
}
