import type { Context } from '../../facts/index.js'
import { heatingFluid, type Thing } from '../../model/index.js'
import { fluidExpansion, hotPressure, pressureTag, type FittedTank, type Sizing } from '../../sizing/index.js'
import { askOnce } from '../ask-once.js'
import { chain } from './chain.js'
import { designOfHouse } from './emitter-sizes.js'
import { toldLine, type SizeLine, type Taking } from './size-line.js'
import { systemFluid } from './system-fluid.js'
import { systemWater } from './system-water.js'
import { reliefSetting } from './tank-inputs.js'

/** What to write on a tag at the gauge: the charge to set, and the readings to expect cold, on the design day, and at the hottest. */
export function tankTag(
  context: Context,
  { tank, fitted }: { readonly tank: Thing; readonly fitted: (take: Taking) => FittedTank },
): SizeLine {
  return toldLine({ name: 'tag for the gauge', of: tank.id }, (take) => {
    const cold = take.number(askOnce(context, heatingFluid, 'fillTemperature'))
    const { supply, return: back } = designOfHouse(context, take)
    const warm = [(supply + back) / 2, take.number(askOnce(context, heatingFluid, 'highestMean'))]
    const { fill, ...rest } = fitted(take)
    const charged = { ...rest, fill, precharge: fill }
    const readings = warm.map((temperature) => ({
      temperature,
      pressure: hotReading(context, take, { tank: charged, cold, hot: temperature }),
    }))
    const relief = reliefSetting(context, take)
    const numbers = [cold, fill, relief, ...warm]
    if (numbers.some((number) => !Number.isFinite(number))) return ''
    const wrong = readings.flatMap(({ pressure }) => (pressure.sized ? [] : [pressure.why]))[0]
    if (wrong !== undefined) return wrong
    return pressureTag({
      units: context.installation.units,
      precharge: fill,
      relief,
      cold: { temperature: cold, pressure: fill },
      hot: readings
        .map(({ temperature, pressure }) => ({ temperature, pressure: pressure.sized ? pressure.value : NaN }))
        .toSorted((one, other) => one.temperature - other.temperature),
    }).join(' ')
  })
}

interface Warmed {
  readonly tank: FittedTank
  /** K */
  readonly cold: number
  /** K */
  readonly hot: number
}

function hotReading(context: Context, take: Taking, { tank, cold, hot }: Warmed): Sizing {
  const fluid = systemFluid(context, take)
  const { volume, precharge, fill, atmosphere } = tank
  return chain(systemWater(context, take, { estimates: true }).likely, (water) =>
    chain(fluidExpansion({ fluid, cold, hot }), (share) =>
      hotPressure({ volume, precharge, fill, atmosphere, expansion: water * share }),
    ),
  )
}
