import { atLeastZero, type Answer, type Context, type Missing } from '../facts/index.js'
import type { Thing } from '../model/index.js'

/** An opening to the outdoors as a method of sizing counts it. */
export interface AirOpening {
  readonly id: string
  /** `any` where nobody knows it, and it may be either. */
  readonly position: 'high' | 'low' | 'any'
  /** How much area its way of bringing air asks for. */
  readonly way: 'two-direct' | 'two-horizontal-ducts'
  /** m2, free. */
  readonly area: number
}

/** The two readings of an opening: what it surely gives a space, and the most that it may give. */
export interface ReadOpening {
  readonly surest: AirOpening | undefined
  readonly best: AirOpening | undefined
  readonly missing: readonly Missing[]
}

/** What an opening gives a space of outdoor air; nothing where it is covered, or leads elsewhere. */
export function openingInto({ ask }: Context, thing: Thing, space: Thing): ReadOpening {
  const [place, to, blocked] = [ask('space', thing), ask('to', thing), ask('blocked', thing)]
  const [position, way] = [ask('position', thing), ask('way', thing)]
  const [area, gross] = [atLeastZero(ask('area', thing)), atLeastZero(ask('grossArea', thing))]
  const counts = [saysThat(place, space.id), saysThat(to, 'outdoors'), saysThat(blocked, 'no')]
  const missing = [place, to, blocked, position, way, ask('area', thing)].flatMap((answer) => answer.missing)
  if (counts.includes('no') || wordOf(position) === 'between')
    return { surest: undefined, best: undefined, missing: [] }
  const at = positionOf(position)
  const best: AirOpening = {
    id: thing.id,
    position: at,
    way: wordOf(way) === 'horizontal' ? 'two-horizontal-ducts' : 'two-direct',
    area: Math.min(area.high, gross.high),
  }
  const sure = at !== 'any' && counts.every((one) => one === 'yes')
  const direct = wordOf(way) === 'direct' || wordOf(way) === 'vertical'
  return {
    surest: sure ? { ...best, way: direct ? 'two-direct' : 'two-horizontal-ducts', area: area.low } : undefined,
    best,
    missing,
  }
}

const wordOf = (answer: Answer): string | undefined => (answer.state === 'word' ? answer.word : undefined)

function saysThat(answer: Answer, word: string): 'yes' | 'no' | 'unknown' {
  if (answer.state !== 'word') return 'unknown'
  return answer.word === word ? 'yes' : 'no'
}

function positionOf(answer: Answer): AirOpening['position'] {
  const word = wordOf(answer)
  return word === 'high' || word === 'low' ? word : 'any'
}
