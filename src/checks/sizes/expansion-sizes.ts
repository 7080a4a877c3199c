import type { Context } from '../../facts/index.js'
import { expansionTank, fillDevice, heatingFluid, type Thing } from '../../model/index.js'
import {
  atmosphericPressure,
  cannotSize,
  diaphragmTank,
  enoughFor,
  fluidExpansion,
  freezingTemperature,
  hotPressure,
  liftTemperature,
  tankAcceptance,
  type FittedTank,
  type Sizing,
} from '../../sizing/index.js'
import { si } from '../../units/index.js'
import { staticPressure } from '../static-pressure.js'
import { chain, stated } from './chain.js'
import { boundLine, sizeLine, type SizeLine, type Taking } from './size-line.js'
import { systemFluid } from './system-fluid.js'
import { systemWater } from './system-water.js'
import {
  belowRelief,
  coldFill,
  reliefSetting,
  setFill,
  swelling,
  wantedAtTop,
  withTankPressures,
} from './tank-inputs.js'
import { tankTag } from './tank-tag.js'
import { askOnce } from '../ask-once.js'

const tenGallons = si('volume', '10 gal')
const filling = si('temperature', '50 F')
const hottest = si('temperature', '180 F')

/** Water of the system, its swelling, the tank for it, and what the gauge will read. */
export function expansionSizes(context: Context): readonly SizeLine[] {
  const tanks = context.listed(expansionTank).things
  return [
    ...fillLines(context),
    tankForTenGallons(context),
    sizeLine(
      { name: 'water of the system' },
      'volume',
      (take) => systemWater(context, take, { estimates: true }).likely,
    ),
    ...iceLines(context),
    sizeLine({ name: 'swelling from cold to hot' }, 'fraction', (take) => swelling(context, take)),
    sizeLine({ name: 'tank needed' }, 'volume', (take) => tankNeeded(context, take, 1)),
    sizeLine({ name: 'tank needed with 15 % more water' }, 'volume', (take) => tankNeeded(context, take, 1.15)),
    sizeLine({ name: 'tank needed with 15 % less water' }, 'volume', (take) => tankNeeded(context, take, 0.85)),
    ...tanks.flatMap((tank) => tankLines(context, tank)),
  ]
}

/** Where there is antifreeze: of plain water everybody knows it. */
function iceLines(context: Context): readonly SizeLine[] {
  const antifreeze = askOnce(context, heatingFluid, 'antifreeze')
  if (antifreeze.state === 'word' && antifreeze.word === 'no-antifreeze') return []
  return [
    sizeLine({ name: 'temperature at which ice begins to form in the fluid' }, 'temperature', (take) => {
      const fluid = systemFluid(context, take)
      return fluid === 'water' ? stated('ice of water', si('temperature', '32 F'), 'K') : freezingTemperature(fluid)
    }),
  ]
}

function fillLines({ ask, listed }: Context): readonly SizeLine[] {
  return listed(fillDevice).things.map((valve) =>
    boundLine({ name: 'cold fill that reaches the top with 4 psi left', of: valve.id }, 'pressure', {
      answer: ask(staticPressure, valve),
      turn: (column) => column + wantedAtTop,
    }),
  )
}

/** Before the water of the house is known: what each ten gallons of it ask, at a height and temperatures that the name tells. */
function tankForTenGallons(context: Context): SizeLine {
  return sizeLine(
    { name: 'tank for every 10 gal of water, 50 F to 180 F, as filled, at sea level' },
    'volume',
    (take) =>
      chain(atmosphericPressure(0), (atmosphere) =>
        chain(fluidExpansion({ fluid: systemFluid(context, take), cold: filling, hot: hottest }), (share) => {
          const fill = setFill(context, take)
          const highest = belowRelief(reliefSetting(context, take), hottest)
          if (!highest.sized) return highest
          return diaphragmTank({ expansion: share * tenGallons, fill, highest: highest.value, atmosphere })
        }),
      ),
  )
}

function tankLines(context: Context, tank: Thing): readonly SizeLine[] {
  const of = tank.id
  const { ask } = context
  return [
    sizeLine({ name: 'water that the tank takes up', of }, 'volume', (take) =>
      withFitted(context, take, { tank, next: tankAcceptance }),
    ),
    sizeLine({ name: 'enough for a system of', of }, 'volume', (take) =>
      chain(swelling(context, take), (share) =>
        withFitted(context, take, { tank, next: (fitted) => enoughFor({ tank: fitted, swelling: share }) }),
      ),
    ),
    sizeLine({ name: 'gauge when hot', of }, 'pressure', (take) =>
      chain(swollen(context, take, 1), (expansion) =>
        asFilled(context, take, { tank, next: (filled) => hotPressure({ ...filled, expansion }) }),
      ),
    ),
    sizeLine({ name: 'mean temperature at which the relief valve lifts', of }, 'temperature', (take) =>
      chain(systemWater(context, take, { estimates: true }).likely, (systemVolume) => {
        const fluid = systemFluid(context, take)
        const cold = take.number(askOnce(context, heatingFluid, 'fillTemperature'))
        const highest = reliefSetting(context, take)
        return asFilled(context, take, {
          tank,
          next: (filled) => liftTemperature({ systemVolume, fluid, cold, tank: { ...filled, highest } }),
        })
      }),
    ),
    sizeLine({ name: 'charge to set, water side empty', of }, 'pressure', (take) =>
      stated('the cold fill pressure', coldFill(context, take), 'Pa'),
    ),
    tankTag(context, tank),
    sizeLine({ name: 'fitted', of }, 'volume', (take) =>
      stated('plate of the tank', take.number(ask('volume', tank)), 'm3'),
    ),
  ]
}

function tankNeeded(context: Context, take: Taking, part: number): Sizing {
  return chain(swollen(context, take, part), (expansion) =>
    withTankPressures(context, take, (pressures) => diaphragmTank({ ...pressures, expansion })),
  )
}

/** @param part of the water that was added up: old houses hold 15 % more or less, common practice */
function swollen(context: Context, take: Taking, part: number): Sizing {
  return chain(systemWater(context, take, { estimates: true }).likely, (volume) =>
    chain(swelling(context, take), (share) => stated('swelling of the water', volume * part * share, 'm3')),
  )
}

interface OnTank {
  readonly tank: Thing
  readonly next: (fitted: FittedTank) => Sizing
}

/** What happens while the house is filled as it is, be that too little. */
function asFilled(context: Context, take: Taking, { tank, next }: OnTank): Sizing {
  const fill = setFill(context, take)
  return withFitted(context, take, { tank, next: (fitted) => next({ ...fitted, fill }) })
}

function withFitted(context: Context, take: Taking, { tank, next }: OnTank): Sizing {
  const { ask } = context
  const limit = ask('acceptance', tank)
  const volume = take.number(ask('volume', tank))
  const precharge = take.number(ask('precharge', tank))
  return withTankPressures(context, take, (pressures) => {
    if (precharge >= pressures.highest)
      return cannotSize(
        `The air charge of ${precharge} Pa reaches the highest pressure of ${pressures.highest} Pa: no water comes in.`,
      )
    return next({ ...pressures, volume, precharge, ...(limit.state === 'number' ? { limit: limit.low } : {}) })
  })
}
