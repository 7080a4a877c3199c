import type { Context } from '../../facts/index.js'
import { boiler, heatingControl, indirectTank, site, zone, type Thing } from '../../model/index.js'
import {
  boilerFlow,
  concurrentLoad,
  cyclesAbove,
  loadAt,
  outputAtAltitude,
  waterForRun,
  type AltitudeLine,
  type LoadLine,
  type Sizing,
} from '../../sizing/index.js'
import { si } from '../../units/index.js'
import { smallestZoneLoad } from '../heat-load.js'
import { chain } from './chain.js'
import { zoneLoads } from './zone-loads.js'
import { plantSizes } from './plant-sizes.js'
import { seasonSizes } from './season-sizes.js'
import { mild, shortestRun, swing } from './short-run.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'
import { systemFluid } from './system-fluid.js'
import { volumeHeat } from './volume-heat.js'
import { askOnce } from '../ask-once.js'

const room = si('temperature', '70 F')
const rises = ['20 F', '30 F', '40 F'] as const

/** What each boiler gives here, when it begins to cycle, what it needs to run long enough, how the year goes, and what it must carry at once. */
export function boilerSizes(context: Context): readonly SizeLine[] {
  return [
    ...context.listed(boiler).things.flatMap((one) => [...linesOf(context, one), ...seasonSizes(context, one)]),
    concurrent(context),
    ...plantSizes(context),
  ]
}

function linesOf(context: Context, one: Thing): readonly SizeLine[] {
  const of = one.id
  const { ask } = context
  return [
    sizeLine({ name: 'output at this altitude', of }, 'heatRate', (take) =>
      outputAtAltitude({
        output: take.number(ask('output', one)),
        altitude: take.number(askOnce(context, site, 'altitude')),
        makerTable: altitudeTable(context, take, one),
        countedFrom: 'two-thousand-feet',
      }),
    ),
    sizeLine({ name: 'outdoor temperature above which it cycles', of }, 'temperature', (take) =>
      chain(zoneLoads(context, take), (designLoad) =>
        cyclesAbove({
          line: loadLine(context, take),
          designLoad,
          lowestOutput: take.number(ask('minimumOutput', one)),
        }),
      ),
    ),
    sizeLine({ name: 'water for a run of 10 min, smallest zone alone, 55 F outdoors', of }, 'volume', (take) =>
      chain(smallestLoadInMildWeather(context, take), (load) =>
        waterForRun({
          lowestOutput: take.number(ask('minimumOutput', one)),
          load,
          onTime: shortestRun,
          swing,
          heatCapacity: volumeHeat(systemFluid(context, take), si('temperature', '110 F')),
        }),
      ),
    ),
    ...rises.map((rise) =>
      sizeLine({ name: `flow that carries the full output with ${rise}`, of }, 'volumeFlow', (take) =>
        boilerFlow({
          heat: take.number(ask('output', one)),
          rise: si('temperatureDifference', rise),
          heatCapacity: volumeHeat(systemFluid(context, take), si('temperature', '140 F')),
        }),
      ),
    ),
    sizeLine({ name: 'least flow at full output', of }, 'volumeFlow', (take) =>
      boilerFlow({
        heat: take.number(ask('output', one)),
        rise: take.number(ask('maximumRise', one)),
        heatCapacity: volumeHeat(systemFluid(context, take), si('temperature', '140 F')),
      }),
    ),
  ]
}

function altitudeTable({ ask, parts }: Context, take: Taking, one: Thing): readonly AltitudeLine[] {
  return parts('altitudeTable', one).things.map((row) => ({
    altitude: take.number(ask('altitude', row)),
    share: take.number(ask('share', row)),
  }))
}

function concurrent(context: Context): SizeLine {
  const { ask, listed } = context
  return sizeLine({ name: 'most that is asked at once' }, 'heatRate', (take) =>
    chain(zoneLoads(context, take), (heating) => {
      const coils = take
        .all(indirectTank.name, listed(indirectTank))
        .map((tank) => take.number(ask('coilRating', tank)))
      const outputs = take.all(boiler.name, listed(boiler)).map((one) => take.number(ask('output', one)))
      const hotWater = Math.min(sum(coils), sum(outputs))
      const controls = take.all(heatingControl.name, listed(heatingControl))
      const priority = controls.some((control) => take.word(ask('hotWaterPriority', control)) === 'yes')
      return concurrentLoad({ heating, hotWater, priority })
    }),
  )
}

function smallestLoadInMildWeather(context: Context, take: Taking): Sizing {
  return loadAt({
    line: loadLine(context, take),
    designLoad: take.number(context.ask(smallestZoneLoad)),
    outdoor: mild,
  })
}

/** The load falls to nothing at room temperature: sun and people are left out, which is the careful side. */
function loadLine(context: Context, take: Taking): LoadLine {
  take.all(zone.name, context.listed(zone))
  return { designOutdoor: take.number(askOnce(context, site, 'outdoorDesign')), balance: room }
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)
