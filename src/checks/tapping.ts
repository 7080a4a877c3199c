import { fact, unknown } from '../facts/index.js'
import { quantity, reliefValve } from '../model/index.js'

/** Size of the tapping that the boiler which a relief valve protects gives it. */
export const tapping = fact('tapping', {
  of: reliefValve,
  type: quantity('nominalSize'),
  read: ({ ask, find }) => {
    const protects = ask('protects')
    const vessel = protects.state === 'word' ? find(protects.word) : undefined
    if (vessel === undefined) return unknown({ missing: protects.missing })
    return vessel.kind.name === 'boiler'
      ? ask('reliefTapping', vessel)
      : unknown({ missing: [{ subject: vessel.id, fact: 'reliefTapping' }] })
  },
})
