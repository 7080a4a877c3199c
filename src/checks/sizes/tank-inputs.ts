import type { Context } from '../../facts/index.js'
import { boiler, fillDevice, heatingFluid, site } from '../../model/index.js'
import {
  atmosphericPressure,
  cannotSize,
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

/** Goes on with the pressures between which the tank works, at this altitude; one that cannot be worked out says why. */
export function withTankPressures(context: Context, take: Taking, next: (pressures: TankPressures) => Sizing): Sizing {
  const warmest = take.number(askOnce(context, heatingFluid, 'highestMean'))
  const atmosphere = atmosphericPressure(take.number(askOnce(context, site, 'altitude')))
  const highest = belowRelief(reliefSetting(context, take), warmest)
  // Asked in any case, so that all that is missing is told at once.
  const result = next({ fill: coldFill(context, take), highest: valueOf(highest), atmosphere: valueOf(atmosphere) })
  if (!atmosphere.sized) return atmosphere
  return highest.sized ? result : highest
}

const valueOf = (sizing: Sizing): number => (sizing.sized ? sizing.value : NaN)

/** Highest pressure that the tank may see. The relief valve is taken to stand as high as the tank. */
export function belowRelief(setting: number, warmest: number): Sizing {
  const density = Number.isFinite(warmest) ? waterDensity(warmest).value : NaN
  if (!Number.isFinite(density)) return cannotSize(`Water of ${warmest} K has no density by the published formula.`)
  return highestPressure({ setting, margin: usualReliefMargin, above: 0, density })
}

/** The larger of what the fill valves are set to and what reaches the top, the latter in whole psi: a tank is bought for what will be filled. */
export function coldFill({ ask, listed }: Context, take: Taking): number {
  const valves = take.all(fillDevice.name, listed(fillDevice))
  const pressures = valves.flatMap((valve) => [
    take.number(ask('setPressure', valve)),
    Math.ceil((take.number(ask(staticPressure, valve)) + wantedAtTop) / psi - rounding) * psi,
  ])
  return Math.max(...pressures)
}

const rounding = 1e-9

/** What the fill valves are set to. */
export function setFill({ ask, listed }: Context, take: Taking): number {
  return Math.max(
    ...take.all(fillDevice.name, listed(fillDevice)).map((valve) => take.number(ask('setPressure', valve))),
  )
}

/** Lowest setting of the relief valves of all boilers. */
export function reliefSetting({ ask, listed }: Context, take: Taking): number {
  const settings = take.all(boiler.name, listed(boiler)).map((one) => take.number(ask(lowestReliefSetting, one)))
  return Math.min(...settings)
}
