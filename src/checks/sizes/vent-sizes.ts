import type { Context } from '../../facts/index.js'
import { ventRun } from '../../model/index.js'
import { sized } from '../../sizing/index.js'
import { equivalentLength } from '../equivalent-length.js'
import { longestAllowed } from '../longest-allowed.js'
import { stated } from './chain.js'
import { airSizes } from './air-sizes.js'
import { chimneySizes } from './chimney-sizes.js'
import { sizeLine, type SizeLine } from './size-line.js'

/** How long each side of the vent counts, what is left of the maker's longest, the chimney that stays, and the air for burners without an intake. */
export function ventSizes(context: Context): readonly SizeLine[] {
  return [...runSizes(context), ...chimneySizes(context), ...airSizes(context)]
}

function runSizes({ ask, listed }: Context): readonly SizeLine[] {
  return listed(ventRun).things.flatMap((run) => [
    sizeLine({ name: 'equivalent length', of: run.id, readAs: 'distance' }, 'length', (take) => {
      const answer = ask(equivalentLength, run)
      return stated((answer.witness ?? []).join(' + '), take.number(answer), 'm')
    }),
    sizeLine({ name: 'length left', of: run.id, readAs: 'distance' }, 'length', (take) => {
      const most = take.number(ask(longestAllowed, run))
      const built = take.number(ask(equivalentLength, run))
      return sized({
        value: most - built,
        working: [
          { name: 'longest by the table of the maker', value: most, unit: 'm', readAs: 'distance' },
          { name: 'as built', value: built, unit: 'm', readAs: 'distance' },
          { name: 'left', value: most - built, unit: 'm', readAs: 'distance' },
        ],
        assumed: [],
        valid: true,
      })
    }),
  ])
}
