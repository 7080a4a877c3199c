import { boundsOf, fact, rebound, type Answer, type Context } from '../facts/index.js'
import { closelySpacedTees, quantity } from '../model/index.js'
import { si } from '../units/index.js'

/** Farthest that the two tees may stand apart: four times the nominal size of the run between them. */
export const widestSpacing = fact('widestSpacing', { of: closelySpacedTees, type: quantity('length'), read })

const diameters = 4
const oneInch = si('length', '1 in') / si('nominalSize', '1')

function read({ ask }: Context): Answer {
  const size = ask('size')
  const { low, high } = boundsOf(size)
  return rebound([size], diameters * oneInch * low, diameters * oneInch * high)
}
