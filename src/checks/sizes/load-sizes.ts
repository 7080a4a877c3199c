import type { Context } from '../../facts/index.js'
import { building, emitter, site } from '../../model/index.js'
import { loadOfArea, loadPlausibility, outputAtRatio, outputOverLoad, type Sizing } from '../../sizing/index.js'
import { boilerOutput } from '../heat-load.js'
import { askOnce } from '../ask-once.js'
import { billSizes } from './bill-sizes.js'
import { chain, over } from './chain.js'
import { sizeLine, toldLine, type SizeLine, type Taking, type Untold } from './size-line.js'
import { zoneLoads } from './zone-loads.js'

/** Heat that the house needs, zone by zone, and how the boilers stand to it. */
export function loadSizes(context: Context): readonly SizeLine[] {
  const { ask } = context
  const area = askOnce(context, building, 'heatedArea')
  const loss = askOnce(context, building, 'heatLoss')
  return [
    sizeLine({ name: 'design load of all zones' }, 'heatRate', (take) => zoneLoads(context, take)),
    sizeLine({ name: 'load of a floor area' }, 'heatFlux', (take) =>
      chain(zoneLoads(context, take), (load) =>
        over('load of the area', load, ['heated area', take.number(area)], 'W/m2'),
      ),
    ),
    toldLine({ name: 'such a load in a renovated house is' }, (take) => plausible(areaLoad(context, take))),
    sizeLine({ name: 'zones over the calculated heat loss' }, 'number', (take) =>
      chain(zoneLoads(context, take), (load) =>
        over('zones over house', load, ['calculated heat loss', take.number(loss)], '1'),
      ),
    ),
    sizeLine({ name: 'boiler output over load' }, 'number', (take) =>
      chain(zoneLoads(context, take), (load) => outputOverLoad({ output: take.number(ask(boilerOutput)), load })),
    ),
    sizeLine({ name: 'load from which the boiler is no more than 1.4 times it' }, 'heatRate', (take) =>
      over('output over 1.4', take.number(ask(boilerOutput)), ['ratio', 1.4], 'W'),
    ),
    sizeLine({ name: 'largest boiler within 1.4 times the load' }, 'heatRate', (take) =>
      chain(zoneLoads(context, take), (load) => outputAtRatio({ load, ratio: 1.4 })),
    ),
    ...billSizes(context),
  ]
}

/** Load of a square meter for each degree between the warmest heated room and the design day. */
function areaLoad(context: Context, take: Taking): Sizing {
  const { ask, listed, find } = context
  const rooms = take.all(emitter.name, listed(emitter)).map((one) => find(take.word(ask('space', one))))
  const indoors = rooms.map((room) => (room === undefined ? NaN : take.number(ask('designTemperature', room))))
  const difference = Math.max(...indoors) - take.number(askOnce(context, site, 'outdoorDesign'))
  const area = take.number(askOnce(context, building, 'heatedArea'))
  return chain(zoneLoads(context, take), (load) => loadOfArea({ load, area, difference }))
}

const plausible = (each: Sizing): string | Untold => (each.sized ? loadPlausibility(each.value) : each)
