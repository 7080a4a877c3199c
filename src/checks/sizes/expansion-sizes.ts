import type { Context } from '../../facts/index.js'
import { boiler, expansionTank, fillValve, heatingFluid, site, type Thing } from '../../model/index.js'
import {
  atmosphericPressure,
  diaphragmTank,
  enoughFor,
  fluidExpansion,
  highestPressure,
  hotPressure,
  liftTemperature,
  tankAcceptance,
  usualReliefMargin,
  waterDensity,
  type FittedTank,
  type Sizing,
  type TankPressures,
} from '../../sizing/index.js'
import { si } from '../../units/index.js'
import { lowestReliefSetting } from '../lowest-relief-setting.js'
import { staticPressure } from '../static-pressure.js'
import { chain, stated } from './chain.js'
import { askOnce, boundLine, sizeLine, type SizeLine, type Taking } from './size-line.js'
import { systemFluid } from './system-fluid.js'
import { systemWater } from './system-water.js'

/** Common practice. */
const wantedAtTop = si('pressure', '4 psi')
const tenGallons = si('volume', '10 gal')
const filling = si('temperature', '50 F')
const hottest = si('temperature', '180 F')

/** Water of the system, its swelling, the tank for it, and what the gauge will read. */
export function expansionSizes(context: Context): readonly SizeLine[] {
  const tanks = context.listed(expansionTank).things
  return [
    ...fillLines(context),
    tankForTenGallons(context),
    sizeLine({ name: 'water of the system' }, 'volume', (take) => systemWater(context, take).likely),
    sizeLine({ name: 'swelling from cold to hot' }, 'fraction', (take) => swelling(context, take)),
    sizeLine({ name: 'tank needed' }, 'volume', (take) => tankNeeded(context, take, 1)),
    sizeLine({ name: 'tank needed with 15 % more water' }, 'volume', (take) => tankNeeded(context, take, 1.15)),
    sizeLine({ name: 'tank needed with 15 % less water' }, 'volume', (take) => tankNeeded(context, take, 0.85)),
    ...tanks.flatMap((tank) => tankLines(context, tank)),
  ]
}

function fillLines({ ask, listed }: Context): readonly SizeLine[] {
  return listed(fillValve).things.map((valve) =>
    boundLine({ name: 'cold fill that reaches the top with 4 psi left', of: valve.id }, 'pressure', {
      answer: ask(staticPressure, valve),
      turn: (column) => column + wantedAtTop,
    }),
  )
}

/** Before the water of the house is known: what each ten gallons of it ask, at a height and temperatures that the name tells. */
function tankForTenGallons(context: Context): SizeLine {
  return sizeLine({ name: 'tank for every 10 gal of water, 50 F to 180 F, at sea level' }, 'volume', (take) =>
    chain(atmosphericPressure(0), (atmosphere) =>
      chain(fluidExpansion({ fluid: systemFluid(context, take), cold: filling, hot: hottest }), (share) =>
        diaphragmTank({
          expansion: share * tenGallons,
          fill: fill(context, take),
          highest: belowRelief(reliefSetting(context, take), hottest),
          atmosphere,
        }),
      ),
    ),
  )
}

function tankLines(context: Context, tank: Thing): readonly SizeLine[] {
  const of = tank.id
  const { ask } = context
  return [
    sizeLine({ name: 'water that the tank takes up', of }, 'volume', (take) =>
      tankAcceptance(fitted(context, take, tank)),
    ),
    sizeLine({ name: 'enough for a system of', of }, 'volume', (take) =>
      chain(swelling(context, take), (share) => enoughFor({ tank: fitted(context, take, tank), swelling: share })),
    ),
    sizeLine({ name: 'gauge when hot', of }, 'pressure', (take) =>
      chain(swollen(context, take, 1), (expansion) => {
        const { volume, precharge, fill: cold, atmosphere } = fitted(context, take, tank)
        return hotPressure({ volume, precharge, fill: cold, atmosphere, expansion })
      }),
    ),
    sizeLine({ name: 'mean temperature at which the relief valve lifts', of }, 'temperature', (take) =>
      chain(systemWater(context, take).likely, (systemVolume) =>
        liftTemperature({
          systemVolume,
          fluid: systemFluid(context, take),
          cold: take.number(askOnce(context, heatingFluid.name, 'fillTemperature')),
          tank: { ...fitted(context, take, tank), highest: reliefSetting(context, take) },
        }),
      ),
    ),
    sizeLine({ name: 'charge to set, water side empty', of }, 'pressure', (take) =>
      stated('the cold fill pressure', fill(context, take), 'Pa'),
    ),
    sizeLine({ name: 'fitted', of }, 'volume', (take) =>
      stated('plate of the tank', take.number(ask('volume', tank)), 'm3'),
    ),
  ]
}

function tankNeeded(context: Context, take: Taking, part: number): Sizing {
  return chain(swollen(context, take, part), (expansion) => diaphragmTank({ ...pressures(context, take), expansion }))
}

/** @param part of the water that was added up: old houses hold 15 % more or less, common practice */
function swollen(context: Context, take: Taking, part: number): Sizing {
  return chain(systemWater(context, take).likely, (volume) =>
    chain(swelling(context, take), (share) => stated('swelling of the water', volume * part * share, 'm3')),
  )
}

function swelling(context: Context, take: Taking): Sizing {
  return fluidExpansion({
    fluid: systemFluid(context, take),
    cold: take.number(askOnce(context, heatingFluid.name, 'fillTemperature')),
    hot: take.number(askOnce(context, heatingFluid.name, 'highestMean')),
  })
}

function fitted(context: Context, take: Taking, tank: Thing): FittedTank {
  const { ask } = context
  const limit = ask('acceptance', tank)
  return {
    ...pressures(context, take),
    volume: take.number(ask('volume', tank)),
    precharge: take.number(ask('precharge', tank)),
    ...(limit.state === 'number' ? { limit: limit.low } : {}),
  }
}

function pressures(context: Context, take: Taking): TankPressures {
  const warmest = take.number(askOnce(context, heatingFluid.name, 'highestMean'))
  const atmosphere = atmosphericPressure(take.number(askOnce(context, site.name, 'altitude')))
  return {
    fill: fill(context, take),
    highest: belowRelief(reliefSetting(context, take), warmest),
    atmosphere: atmosphere.sized ? atmosphere.value : NaN,
  }
}

/** The relief valve is taken to stand as high as the tank. */
function belowRelief(setting: number, warmest: number): number {
  const density = Number.isFinite(warmest) ? waterDensity(warmest).value : NaN
  const highest = highestPressure({ setting, margin: usualReliefMargin, above: 0, density })
  return highest.sized ? highest.value : NaN
}

function fill({ ask, listed }: Context, take: Taking): number {
  const settings = take.all(fillValve.name, listed(fillValve)).map((valve) => take.number(ask('setPressure', valve)))
  return Math.max(...settings)
}

function reliefSetting({ ask, listed }: Context, take: Taking): number {
  const settings = take.all(boiler.name, listed(boiler)).map((one) => take.number(ask(lowestReliefSetting, one)))
  return Math.min(...settings)
}
