import type { Context } from '../../facts/index.js'
import { zone } from '../../model/index.js'
import { sized, type Sizing } from '../../sizing/index.js'
import { designLoad } from '../heat-load.js'
import type { Taking } from './size-line.js'

/** Design load of all zones, with each of them as a term. */
export function zoneLoads({ ask, listed }: Context, take: Taking): Sizing {
  const value = take.number(ask(designLoad))
  const terms = listed(zone).things.map((one) => {
    const load = ask('designLoad', one)
    return { name: one.name ?? one.id, value: load.state === 'number' ? load.low : NaN, unit: 'W' }
  })
  return sized({ value, working: [...terms, { name: 'all zones', value, unit: 'W' }], assumed: [], valid: true })
}
