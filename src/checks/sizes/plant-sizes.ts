import type { Context } from '../../facts/index.js'
import { boiler, building, bufferTank, heatingControl, indirectTank, water, type Thing } from '../../model/index.js'
import {
  buffer,
  coolDown,
  loadAt,
  plantTurndown,
  reheatTime,
  shareWithOneOut,
  type PlantBoiler,
  type Sizing,
} from '../../sizing/index.js'
import { si } from '../../units/index.js'
import { askOnce } from '../ask-once.js'
import { smallestZoneLoad } from '../heat-load.js'
import { chain } from './chain.js'
import { designOfHouse } from './curve-sizes.js'
import { mild, shortestRun, swing } from './short-run.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'
import { systemFluid } from './system-fluid.js'
import { heatIntoTank } from './tank-supply.js'
import { volumeHeat } from './volume-heat.js'
import { zoneLoads } from './zone-loads.js'

/** Boilers together: with one of them out, with a tank to heat meanwhile, and with too little water for a long run. */
export function plantSizes(context: Context): readonly SizeLine[] {
  const { listed } = context
  const tanks = listed(indirectTank).things
  return [
    ...(listed(boiler).things.length > 1 ? severalLines(context) : []),
    sizeLine({ name: 'turndown of all boilers together' }, 'number', (take) => plantTurndown(plant(context, take))),
    ...tanks.map((tank) =>
      sizeLine({ name: 'longest that heating waits for a cold tank', of: tank.id }, 'time', (take) =>
        waiting(context, take, tank),
      ),
    ),
    ...listed(heatingControl).things.map((control) =>
      sizeLine(
        { name: 'cooling of the rooms by the end of its priority, design day', of: control.id },
        'temperatureDifference',
        (take) => cooling(context, take, control),
      ),
    ),
    ...listed(boiler).things.map((one) =>
      sizeLine(
        { name: 'buffer to add for a run of 10 min, smallest zone alone, 55 F outdoors', of: one.id },
        'volume',
        (take) => bufferFor(context, take, one),
      ),
    ),
  ]
}

function severalLines(context: Context): readonly SizeLine[] {
  return [
    sizeLine({ name: 'part of the load covered with the largest boiler out' }, 'fraction', (take) =>
      chain(zoneLoads(context, take), (load) => shareWithOneOut(plant(context, take), load)),
    ),
  ]
}

function plant({ ask, listed }: Context, take: Taking): readonly PlantBoiler[] {
  return take.all(boiler.name, listed(boiler)).map((one) => ({
    name: one.id,
    lowestOutput: take.number(ask('minimumOutput', one)),
    highestOutput: take.number(ask('output', one)),
  }))
}

function waiting(context: Context, take: Taking, tank: Thing): Sizing {
  const { ask } = context
  return reheatTime({
    volume: take.number(ask('volume', tank)),
    from: take.number(askOnce(context, water, 'coldest')),
    to: take.number(ask('storedTemperature', tank)),
    heatRate: heatIntoTank(context, take, tank),
  })
}

/** Only the time constant counts: a house of twice the loss and twice the weight cools as fast. */
function cooling(context: Context, take: Taking, control: Thing): Sizing {
  const { room, designOutdoor } = designOfHouse(context, take)
  return coolDown({
    interruption: take.number(context.ask('priorityLimit', control)),
    heatCapacity: take.number(askOnce(context, building, 'timeConstant')),
    conductance: 1,
    indoor: room,
    outdoor: designOutdoor,
  })
}

/** Boiler and buffer tanks take part whatever zone is open; what else does is not counted. */
function bufferFor(context: Context, take: Taking, one: Thing): Sizing {
  const { ask, listed } = context
  const { room, designOutdoor } = designOfHouse(context, take)
  const smallest = take.number(ask(smallestZoneLoad))
  const tanks = take.all(bufferTank.name, listed(bufferTank)).map((tank) => take.number(ask('volume', tank)))
  const present = tanks.reduce((sum, volume) => sum + volume, take.number(ask('waterVolume', one)))
  const line = { designOutdoor, balance: room }
  return chain(loadAt({ line, designLoad: smallest, outdoor: mild }), (load) =>
    buffer({
      lowestOutput: take.number(ask('minimumOutput', one)),
      load,
      onTime: shortestRun,
      swing,
      heatCapacity: volumeHeat(systemFluid(context, take), si('temperature', '110 F')),
      present,
    }),
  )
}
