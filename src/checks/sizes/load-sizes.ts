import type { Context } from '../../facts/index.js'
import { building, zone } from '../../model/index.js'
import { outputAtRatio, outputOverLoad, type Sizing } from '../../sizing/index.js'
import { boilerOutput } from '../heat-load.js'
import { addedUp, chain, over } from './chain.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'
import { askOnce } from '../ask-once.js'

/** Heat that the house needs, zone by zone, and how the boilers stand to it. */
export function loadSizes(context: Context): readonly SizeLine[] {
  const { ask } = context
  const area = askOnce(context, building, 'heatedArea')
  const loss = askOnce(context, building, 'heatLoss')
  return [
    sizeLine({ name: 'design load of all zones' }, 'heatRate', (take) => zoneLoads(context, take)),
    sizeLine({ name: 'load of a floor area' }, 'heatFlux', (take) =>
      chain(zoneLoads(context, take), (load) => over('load of the area', load, take.number(area), 'W/m2')),
    ),
    sizeLine({ name: 'zones over the calculated heat loss' }, 'number', (take) =>
      chain(zoneLoads(context, take), (load) => over('zones over house', load, take.number(loss), '1')),
    ),
    sizeLine({ name: 'boiler output over load' }, 'number', (take) =>
      chain(zoneLoads(context, take), (load) => outputOverLoad({ output: take.number(ask(boilerOutput)), load })),
    ),
    sizeLine({ name: 'load from which the boiler is no more than 1.4 times it' }, 'heatRate', (take) =>
      over('output over 1.4', take.number(ask(boilerOutput)), 1.4, 'W'),
    ),
    sizeLine({ name: 'largest boiler within 1.4 times the load' }, 'heatRate', (take) =>
      chain(zoneLoads(context, take), (load) => outputAtRatio({ load, ratio: 1.4 })),
    ),
  ]
}

/** Design loads of all zones, added up. */
export function zoneLoads({ ask, listed }: Context, take: Taking): Sizing {
  const zones = take.all(zone.name, listed(zone))
  const terms = zones.map((one) => ({
    name: one.name ?? one.id,
    value: take.number(ask('designLoad', one)),
    unit: 'W',
  }))
  return addedUp('all zones', terms, 'W')
}
