import type { Context } from '../../facts/index.js'
import { boiler, fillValve, heatingFluid, site } from '../../model/index.js'
import {
  atmosphericPressure,
  fluidExpansion,
  highestPressure,
  usualReliefMargin,
  waterDensity,
  type Sizing,
  type TankPressures,
} from '../../sizing/index.js'
import { si } from '../../units/index.js'
import { lowestReliefSetting } from '../lowest-relief-setting.js'
import { staticPressure } from '../static-pressure.js'
import { type Taking } from './size-line.js'
import { systemFluid } from './system-fluid.js'
import { askOnce } from '../ask-once.js'

/** Wanted at the highest emitter; common practice. */
export const wantedAtTop = si('pressure', '4 psi')
const psi = si('pressure', '1 psi')

/** Share by which the fluid swells from the fill to the hottest mean. */
export function swelling(context: Context, take: Taking): Sizing {
  return fluidExpansion({
    fluid: systemFluid(context, take),
    cold: take.number(askOnce(context, heatingFluid, 'fillTemperature')),
    hot: take.number(askOnce(context, heatingFluid, 'highestMean')),
  })
}

/** Between which pressures the tank works, at this altitude. */
export function tankPressures(context: Context, take: Taking): TankPressures {
  const warmest = take.number(askOnce(context, heatingFluid, 'highestMean'))
  const atmosphere = atmosphericPressure(take.number(askOnce(context, site, 'altitude')))
  return {
    fill: coldFill(context, take),
    highest: belowRelief(reliefSetting(context, take), warmest),
    atmosphere: atmosphere.sized ? atmosphere.value : NaN,
  }
}

/** The relief valve is taken to stand as high as the tank. */
export function belowRelief(setting: number, warmest: number): number {
  const density = Number.isFinite(warmest) ? waterDensity(warmest).value : NaN
  const highest = highestPressure({ setting, margin: usualReliefMargin, above: 0, density })
  return highest.sized ? highest.value : NaN
}

/** The larger of what the fill valves are set to and what reaches the top, the latter in whole psi: a tank is bought for what will be filled. */
export function coldFill({ ask, listed }: Context, take: Taking): number {
  const valves = take.all(fillValve.name, listed(fillValve))
  const pressures = valves.flatMap((valve) => [
    take.number(ask('setPressure', valve)),
    Math.ceil((take.number(ask(staticPressure, valve)) + wantedAtTop) / psi - rounding) * psi,
  ])
  return Math.max(...pressures)
}

const rounding = 1e-9

/** What the fill valves are set to. */
export function setFill({ ask, listed }: Context, take: Taking): number {
  return Math.max(...take.all(fillValve.name, listed(fillValve)).map((valve) => take.number(ask('setPressure', valve))))
}

/** Lowest setting of the relief valves of all boilers. */
export function reliefSetting({ ask, listed }: Context, take: Taking): number {
  const settings = take.all(boiler.name, listed(boiler)).map((one) => take.number(ask(lowestReliefSetting, one)))
  return Math.min(...settings)
}
