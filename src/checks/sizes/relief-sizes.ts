import type { Context } from '../../facts/index.js'
import { boiler } from '../../model/index.js'
import { mostWhileRelieving, smallestReliefInlet } from '../../sizing/index.js'
import { lowestReliefSetting } from '../lowest-relief-setting.js'
import { reliefCapacity } from '../relief-capacity.js'
import { over, stated } from './chain.js'
import { sizeLine, type SizeLine } from './size-line.js'

/** What the relief valves of each boiler carry off against what it can give. */
export function reliefSizes({ ask, listed }: Context): readonly SizeLine[] {
  return listed(boiler).things.flatMap((one) => {
    const of = one.id
    return [
      sizeLine({ name: 'relief capacity needed', of }, 'heatRate', (take) =>
        stated('output on the plate', take.number(ask('output', one)), 'W'),
      ),
      sizeLine({ name: 'relief capacity over output', of }, 'number', (take) =>
        over(
          'capacity over output',
          take.number(ask(reliefCapacity, one)),
          ['output', take.number(ask('output', one))],
          '1',
        ),
      ),
      sizeLine({ name: 'smallest relief inlet', of }, 'nominalSize', (take) =>
        smallestReliefInlet(take.number(ask('input', one))),
      ),
      sizeLine({ name: 'lowest relief setting', of }, 'pressure', (take) =>
        stated('tag of the valve', take.number(ask(lowestReliefSetting, one)), 'Pa'),
      ),
      sizeLine({ name: 'most pressure while relieving', of }, 'pressure', (take) =>
        mostWhileRelieving(take.number(ask('mawp', one))),
      ),
    ]
  })
}
