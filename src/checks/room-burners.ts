import type { Answer, Context, Missing } from '../facts/index.js'
import { boiler, waterHeater, type Thing } from '../model/index.js'
import { uncounted } from './uncounted.js'

/** A boiler or water heater that takes, or may take, its air from a space. */
export interface RoomBurner {
  readonly thing: Thing
  /** Whether it surely stands here and surely takes room air. */
  readonly sure: boolean
  /** Heat input. */
  readonly input: Answer
  /** What would tell more. */
  readonly missing: readonly Missing[]
}

/** All of them for one space, and how many more there may be. */
export interface RoomBurners {
  readonly burners: readonly RoomBurner[]
  readonly more: number
  /** Kinds of which the count is not known. */
  readonly uncounted: readonly Missing[]
}

/**
 * Boilers and water heaters that take their air from a space, or may: a sealed one takes none; one of which this, or its
 * place, is not known may stand here.
 */
export function roomBurners(context: Context, space: Thing): RoomBurners {
  const [boilers, heaters] = [context.listed(boiler), context.listed(waterHeater)]
  const burners = [
    ...boilers.things.flatMap((thing) => burnerOf(context, { thing, space, field: 'sealedCombustion', sealed: 'yes' })),
    ...heaters.things.flatMap((thing) => burnerOf(context, { thing, space, field: 'venting', sealed: 'direct' })),
  ]
  return {
    burners,
    more: boilers.more + heaters.more,
    uncounted: [...uncounted(boiler, boilers.more), ...uncounted(waterHeater, heaters.more)],
  }
}

interface Placed {
  readonly thing: Thing
  readonly space: Thing
  readonly field: string
  readonly sealed: string
}

function burnerOf({ ask }: Context, { thing, space, field, sealed }: Placed): readonly RoomBurner[] {
  const [place, air, input] = [ask('space', thing), ask(field, thing), ask('input', thing)]
  const elsewhere = place.state === 'word' && place.word !== space.id
  const takesNone = air.state === 'word' && air.word === sealed
  if (elsewhere || takesNone) return []
  const sure = place.state === 'word' && air.state === 'word'
  return [{ thing, sure, input, missing: [...place.missing, ...air.missing, ...input.missing] }]
}
