import { unknown, word, type Answer, type Context } from '../facts/index.js'
import { boiler } from '../model/index.js'
import { reachedThings } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { condensateOf, isNeutralizer } from './condensate-way.js'
import { isCorrodible } from './is-corrodible.js'

/**
 * Whether pipe that acid attacks carries condensate of the boiler before a neutralizer; without one, anywhere up to the
 * drain. A line is of one material over its whole length.
 */
export const metalAheadOfNeutralizer = defineCheck('metalAheadOfNeutralizer', {
  of: boiler,
  answers: ['yes', 'no'],
  answerable: true,
  judge,
})

function judge({ subject, network, ask }: Context): Answer {
  const ahead = reachedThings(network, condensateOf(subject), { things: isNeutralizer, crossing: true })
  const pipes = ahead.lines.map((line) => ({ line, type: ask('pipe.type', line) }))
  const metal = pipes.find(({ type }) => type.state === 'word' && isCorrodible(type.word))
  if (metal?.type.state === 'word') {
    const turningPoint = { at: metal.line.id, because: `it is of ${metal.type.word} and carries acid` }
    return word('yes', { witness: [`${metal.line.id} ${metal.type.word}`], turningPoint })
  }
  const missing = [...pipes.flatMap(({ type }) => type.missing), ...ahead.missing]
  if (missing.length > 0) return unknown({ missing })
  return word('no', { witness: pipes.map(({ line }) => line.id) })
}
