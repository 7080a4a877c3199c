import { fact, known, unknown, type Answer, type Context } from '../facts/index.js'
import { quantity, ventRun } from '../model/index.js'
import { printQuantity } from '../units/index.js'
import { ventTableRowFor } from './vent-table-row-for.js'

/**
 * Longest equivalent length that the maker's table allows for the size of the run. A size that a complete table does not list
 * is not accepted at any length: zero.
 */
export const longestAllowed = fact('longestAllowed', { of: ventRun, type: quantity('length'), read })

function read(context: Context): Answer {
  const { ask, installation } = context
  const found = ventTableRowFor(context)
  switch (found.found) {
    case 'row': {
      const longest = ask('maximumLength', found.row)
      return { ...longest, witness: [found.row.id] }
    }
    case 'none': {
      const size = printQuantity(found.size, 'nominalSize', installation.units)
      return known(0, { witness: [`the vent table of ${found.appliance} lists no size ${size}`] })
    }
    case 'unknown':
      return unknown({ missing: found.missing })
    default:
      return neverFound(found)
  }
}

function neverFound(found: never): never {
  throw new TypeError(`no such find: ${String(found)}`)
}
