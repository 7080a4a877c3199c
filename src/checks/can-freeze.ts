import { boundsOf, unknown, word, type Answer, type Context, type Missing } from '../facts/index.js'
import { heatingFluid, line, site, type Thing } from '../model/index.js'
import { defineCheck } from '../rulebook/index.js'
import { firstIce } from './first-ice.js'
import { askOnce } from './ask-once.js'

/** Whether heating water freezes somewhere in its pipe: a line without frost protection runs through a place that gets colder than the temperature at which ice begins to form. Pipe in heated space counts as warm. */
export const canFreeze = defineCheck('canFreeze', {
  of: heatingFluid,
  answers: ['yes', 'no'],
  answerable: true,
  judge,
})

function judge(context: Context): Answer {
  const { things, more } = context.listed(line)
  const ice = firstIce(context)
  const asked = things
    .filter(({ medium }) => medium === 'heatingWater')
    .map((thing) => ({ thing, ...lineFreezes(context, thing, ice) }))
  const frozen = asked.find(({ freezes }) => freezes === true)
  if (frozen !== undefined) {
    const turningPoint = { at: frozen.thing.id, because: 'it gets colder there than its water can stand' }
    return word('yes', { witness: frozen.witness, turningPoint })
  }
  const missing = asked.flatMap((each) => each.missing)
  if (more > 0) return unknown({ missing: [...missing, { subject: line.name, fact: 'count' }] })
  return asked.every(({ freezes }) => freezes === false) ? word('no') : unknown({ missing })
}

interface Freezes {
  readonly freezes: boolean | undefined
  readonly witness: readonly string[]
  readonly missing: readonly Missing[]
}

const warm: Freezes = { freezes: false, witness: [], missing: [] }

function lineFreezes(context: Context, thing: Thing, ice: Answer): Freezes {
  const guarded = context.ask('freezeProtected', thing)
  const exposure = context.ask('exposure', thing)
  if (isWord(guarded, 'yes') || isWord(exposure, 'heated')) return warm
  if (exposure.state !== 'word') return { freezes: undefined, witness: [], missing: exposure.missing }
  const places = coldestPlaces(context, thing, exposure.word)
  const bounds = boundsOf(ice)
  const missing = [...guarded.missing, ...ice.missing, ...places.flatMap((place) => place.missing)]
  if (places.length > 0 && places.every((place) => boundsOf(place).low > bounds.high)) return warm
  const isCold = places.some((place) => boundsOf(place).high < bounds.low)
  const freezes = isCold && isWord(guarded, 'no') ? true : undefined
  return { freezes, witness: [thing.id, exposure.word], missing: freezes === undefined ? missing : [] }
}

function coldestPlaces(context: Context, thing: Thing, exposure: string): readonly Answer[] {
  const { ask, find } = context
  if (exposure === 'outdoors') {
    return [askOnce(context, site, 'outdoorDesign')]
  }
  const spaces = ask('spaces', thing)
  if (spaces.state !== 'list') return [unknown({ missing: spaces.missing })]
  const listed = spaces.members.map((id) => coldestOf(find(id), id, ask))
  return spaces.complete && listed.length > 0 ? listed : [...listed, unknown({ missing: spaces.missing })]
}

function coldestOf(space: Thing | undefined, id: string, ask: Context['ask']): Answer {
  if (space === undefined) return unknown({ missing: [{ subject: id, fact: 'lowestTemperature' }] })
  return ask('lowestTemperature', space)
}

function isWord(answer: Answer, expected: string): boolean {
  return answer.state === 'word' && answer.word === expected
}
