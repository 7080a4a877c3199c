import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { reliefValve } from '../model/index.js'
import { defineCheck } from '../rulebook/index.js'

/** What a relief valve protects: a boiler, or a tank or heater of drinking water. */
export const protectedKind = defineCheck('protectedKind', {
  of: reliefValve,
  answers: ['boiler', 'indirectTank', 'waterHeater'],
  judge,
})

function judge({ ask, find }: Context): Answer {
  const asked = ask('protects')
  const thing = asked.state === 'word' ? find(asked.word) : undefined
  return thing === undefined ? unknown({ missing: asked.missing }) : word(thing.kind.name, { witness: [thing.id] })
}
