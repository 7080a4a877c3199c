import type { Context } from '../facts/index.js'
import {
  expansionTank,
  indirectTank,
  potableExpansionTank,
  site,
  water,
  waterHeater,
  type Thing,
} from '../model/index.js'
import {
  airCushionTank,
  atmosphericPressure,
  cannotSize,
  diaphragmTank,
  potableTank,
  type Sizing,
} from '../sizing/index.js'
import { sizedFact } from './sized-fact.js'
import { chain, stated } from './sizes/chain.js'
import { type Taking } from './sizes/size-line.js'
import { swelling, withTankPressures } from './sizes/tank-inputs.js'
import { systemWater } from './sizes/system-water.js'
import { askOnce } from './ask-once.js'

/**
 * Volume that this tank needs so that the heating system can swell from its fill to its hottest mean below the relief setting;
 * what other expansion tanks hold is taken off. Known only when all water, pressures and temperatures are.
 */
export const volumeNeeded = sizedFact('volumeNeeded', {
  of: expansionTank,
  quantity: 'volume',
  size: (context, take) =>
    chain(waterTakenUp(context, take), (expansion) =>
      chain(tankFor(context, take, expansion), (needed) =>
        lessOthers(context, take, { of: expansionTank.name, needed }),
      ),
    ),
})

/** Water that the heating system pushes out when it is hottest. */
export const swollenWater = sizedFact('swollenWater', { of: expansionTank, quantity: 'volume', size: waterTakenUp })

/**
 * Volume that this potable tank needs so that the stored water of all tanks and heaters can swell; what other potable expansion
 * tanks hold is taken off.
 */
export const potableVolumeNeeded = sizedFact('volumeNeeded', {
  of: potableExpansionTank,
  quantity: 'volume',
  size: (context, take) =>
    chain(potableFor(context, take), (needed) => lessOthers(context, take, { of: potableExpansionTank.name, needed })),
})

function waterTakenUp(context: Context, take: Taking): Sizing {
  return chain(systemWater(context, take, { estimates: false }).likely, (volume) =>
    chain(swelling(context, take), (share) => stated('swelling of the water', volume * share, 'm3')),
  )
}

function tankFor(context: Context, take: Taking, expansion: number): Sizing {
  const type = take.word(context.ask('type'))
  return withTankPressures(context, take, (pressures) =>
    type === 'air-cushion' ? airCushionTank({ ...pressures, expansion }) : diaphragmTank({ ...pressures, expansion }),
  )
}

function potableFor(context: Context, take: Taking): Sizing {
  const { ask, listed } = context
  const stores = [indirectTank, waterHeater].flatMap((kind) => take.all(kind.name, listed(kind)))
  if (stores.length === 0) return cannotSize('No tank and no heater stores hot water here.')
  const number = (field: string): readonly number[] => stores.map((store) => take.number(ask(field, store)))
  return chain(atmosphericPressure(take.number(askOnce(context, site, 'altitude'))), (atmosphere) =>
    potableTank({
      stored: number('volume').reduce((sum, volume) => sum + volume, 0),
      cold: take.number(askOnce(context, water, 'coldest')),
      hot: Math.max(...number('storedTemperature')),
      supply: take.number(askOnce(context, water, 'staticPressure')),
      highest: take.number(askOnce(context, water, 'highestPressure')),
      atmosphere,
    }),
  )
}

interface Needed {
  readonly of: string
  readonly needed: number
}

function lessOthers({ subject, ask, listed }: Context, take: Taking, { of, needed }: Needed): Sizing {
  const others = take.all(of, listed(of)).filter((tank: Thing) => tank.id !== subject.id)
  const held = others.reduce((sum, tank) => sum + take.number(ask('volume', tank)), 0)
  return stated(others.length === 0 ? 'tank' : 'tank beside the others', Math.max(0, needed - held), 'm3')
}
