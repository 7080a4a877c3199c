import type { Context } from '../../facts/index.js'
import { heatingFluid, type Thing } from '../../model/index.js'
import { diaphragmTank, fluidExpansion, hotPressure, pressureTag, type Sizing } from '../../sizing/index.js'
import { askOnce } from '../ask-once.js'
import { chain } from './chain.js'
import { designOfHouse } from './curve-sizes.js'
import { toldLine, type SizeLine, type Taking } from './size-line.js'
import { systemFluid } from './system-fluid.js'
import { systemWater } from './system-water.js'
import { coldFill, reliefSetting, withTankPressures } from './tank-inputs.js'

/** What to write on a tag at the gauge: the charge to set, and the readings to expect cold, on the design day, and at the hottest. */
export function tankTag(context: Context, tank: Thing): SizeLine {
  return toldLine({ name: 'tag for the gauge', of: tank.id }, (take) => {
    const cold = take.number(askOnce(context, heatingFluid, 'fillTemperature'))
    const { supply, return: back } = designOfHouse(context, take)
    const warm = [(supply + back) / 2, take.number(askOnce(context, heatingFluid, 'highestMean'))]
    const readings = warm.map((hot) => ({ hot, reading: hotReading(context, take, { tank, cold, hot }) }))
    const wrong = readings.flatMap(({ reading }) => (reading.sized ? [] : [reading]))[0]
    if (wrong !== undefined) return wrong
    const fill = coldFill(context, take)
    return pressureTag({
      units: context.installation.units,
      precharge: fill,
      relief: reliefSetting(context, take),
      cold: { temperature: cold, pressure: fill },
      hot: readings
        .map(({ hot, reading }) => ({ temperature: hot, pressure: reading.sized ? reading.value : NaN }))
        .toSorted((one, other) => one.temperature - other.temperature),
    }).join(' ')
  })
}

interface Warmed {
  readonly tank: Thing
  /** K */
  readonly cold: number
  /** K */
  readonly hot: number
}

/** What the gauge will read on a tank with the right charge; one that is too small says so instead. */
function hotReading(context: Context, take: Taking, { tank, cold, hot }: Warmed): Sizing {
  const fluid = systemFluid(context, take)
  const volume = take.number(context.ask('volume', tank))
  return chain(systemWater(context, take, { estimates: true }).likely, (water) =>
    chain(fluidExpansion({ fluid, cold, hot }), (share) =>
      withTankPressures(context, take, (pressures) =>
        chain(diaphragmTank({ ...pressures, expansion: water * share }), () =>
          hotPressure({ ...pressures, precharge: pressures.fill, volume, expansion: water * share }),
        ),
      ),
    ),
  )
}
