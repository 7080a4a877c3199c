import type { Context } from '../../facts/index.js'
import { reading, type Thing } from '../../model/index.js'
import { carbonMonoxideAirFree, condensingEfficiency, flueDewPoint, sized, type Sizing } from '../../sizing/index.js'
import { carbonDioxideGap } from '../carbon-dioxide-gap.js'
import { stated } from './chain.js'
import { withSlip, type MeasuredFlue } from './flue-of-boiler.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'

/** What each printed slip says of the air, the dew point and the loss of a burner. */
export function slipSizes(context: Context): readonly SizeLine[] {
  const { ask, listed } = context
  const slips = listed(reading).things.filter((one) => ask('oxygen', one).state === 'number')
  return slips.flatMap((slip) => linesOf(context, slip))
}

function linesOf(context: Context, slip: Thing): readonly SizeLine[] {
  const { ask } = context
  const of = slip.id
  return [
    sizeLine({ name: 'CO without the air that dilutes it', of }, 'concentration', (take) =>
      inParts(
        carbonMonoxideAirFree({
          carbonMonoxide: take.number(ask('carbonMonoxide', slip)),
          oxygen: take.number(ask('oxygen', slip)),
        }),
      ),
    ),
    sizeLine({ name: 'CO2 on the slip off from its oxygen by', of }, 'fraction', (take) =>
      sized({
        value: take.number(ask(carbonDioxideGap, slip)),
        working: [],
        assumed: [],
        valid: true,
      }),
    ),
    sizeLine({ name: 'excess air', of }, 'fraction', (take) =>
      flueOf(context, take, {
        slip,
        next: ({ excessAir }) => sized({ value: excessAir, working: [], assumed: [], valid: true }),
      }),
    ),
    sizeLine({ name: 'dew point of the flue gas', of }, 'temperature', (take) =>
      flueOf(context, take, { slip, next: flueDewPoint }),
    ),
    ...(ask('flueTemperature', slip).state === 'number' ? [efficiencyLine(context, slip)] : []),
  ]
}

/** Its first step is a part of a million as well, the second a percentage. */
function inParts(monoxide: Sizing): Sizing {
  if (!monoxide.sized) return monoxide
  const working = monoxide.working.map((step, index) => ({
    ...step,
    readAs: index === 1 ? ('percent' as const) : ('parts' as const),
  }))
  return { ...monoxide, working }
}

function efficiencyLine(context: Context, slip: Thing): SizeLine {
  return sizeLine({ name: 'efficiency without the loss of the jacket', of: slip.id }, 'fraction', (take) => {
    const flueTemperature = take.number(context.ask('flueTemperature', slip))
    return flueOf(context, take, {
      slip,
      next: (flue) => condensingEfficiency({ ...flue, flueTemperature, jacketLoss: 0 }),
    })
  })
}

function flueOf(
  context: Context,
  take: Taking,
  { slip, next }: { readonly slip: Thing; readonly next: (flue: MeasuredFlue) => Sizing },
): Sizing {
  const { ask, find } = context
  const burner = find(take.word(ask('component', slip)))
  const oxygen = take.number(ask('oxygen', slip))
  if (burner === undefined) {
    take.note([{ subject: slip.id, fact: 'component' }])
    return stated('flue gas', NaN, '1')
  }
  return withSlip(context, take, { burner, oxygen, next })
}
