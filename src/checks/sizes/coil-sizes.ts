import type { Context } from '../../facts/index.js'
import { state, type Thing } from '../../model/index.js'
import { coilConductance, coilReheatTime, type Sizing } from '../../sizing/index.js'
import { chain } from './chain.js'
import { systemFluid } from './system-fluid.js'
import type { Taking } from './size-line.js'
import { outputOfBoilers, tankSupply } from './tank-supply.js'
import { volumeHeat } from './volume-heat.js'

/** Time in which the coil of a tank warms it from cold, with the supply of the state that makes hot water. */
export function coilReheat(context: Context, take: Taking, tank: Thing): Sizing {
  const { ask } = context
  const number = (field: string): number => take.number(ask(field, tank))
  const entering = supplyForHotWater(context, take)
  const rated = { entering: number('coilRatedEntering'), tank: number('coilRatedTank') }
  const [heatRate, flow] = [number('coilRating'), number('coilFlow')]
  const fluid = systemFluid(context, take)
  const { volume, cold, stored } = tankSupply(context, take, tank)
  const boilerOutput = outputOfBoilers(context, take)
  const flowCapacity = flow * volumeHeat(fluid, rated.entering)
  const leaving = rated.entering - heatRate / flowCapacity
  return chain(coilConductance({ heatRate, entering: rated.entering, leaving, tank: rated.tank }), (conductance) =>
    coilReheatTime({ conductance, flowCapacity, entering, boilerOutput, volume, from: cold, to: stored }),
  )
}

/** The coolest supply of the states that make hot water; K. */
function supplyForHotWater({ ask, listed }: Context, take: Taking): number {
  const making = take.all(state.name, listed(state)).filter((one) => {
    const purpose = take.word(ask('purpose', one))
    return purpose === 'hot-water' || purpose === 'both'
  })
  return Math.min(...making.map((one) => take.number(ask('supply', one))))
}
