import type { Context } from '../../facts/index.js'
import { recirculationLoop, type Thing } from '../../model/index.js'
import {
  pipeHeatLoss,
  recirculationFlow,
  recirculationLoss,
  recirculationReturn,
  type Sizing,
} from '../../sizing/index.js'
import { pipeSize } from '../../tables/index.js'
import { si } from '../../units/index.js'
import { listedPipe } from '../listed-pipe.js'
import { chain } from './chain.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'
import { delivered } from './tank-supply.js'

const air = si('temperature', '70 F')
const drop = si('temperatureDifference', '5 F')
/** W/m K of mineral wool and rubber foam; common practice. */
const conductivity = 0.0389
/** Of paint, foam and tarnished metal; new bright copper gives off less. */
const emissivity = 0.9

/** What the return of each circulation loop loses, the flow that makes up for it, and how warm it comes back. */
export function recirculationSizes(context: Context): readonly SizeLine[] {
  return context.listed(recirculationLoop).things.flatMap((loop) => linesOf(context, loop))
}

function linesOf(context: Context, loop: Thing): readonly SizeLine[] {
  const of = loop.id
  const { ask } = context
  return [
    sizeLine({ name: 'loss of a length of its return, in air of 70 F', of }, 'heatRatePerLength', (take) =>
      lossPerLength(context, take, loop),
    ),
    sizeLine({ name: 'loss of its return', of }, 'heatRate', (take) => loss(context, take, loop)),
    sizeLine({ name: 'flow that lets the return cool by 5 F', of }, 'volumeFlow', (take) =>
      chain(loss(context, take, loop), (lost) =>
        recirculationFlow({ loss: lost, drop, temperature: delivered(context, take) }),
      ),
    ),
    sizeLine({ name: 'return at its flow', of }, 'temperature', (take) => {
      const [supply, flow] = [delivered(context, take), take.number(ask('flow', loop))]
      return chain(loss(context, take, loop), (lost) =>
        recirculationReturn({ supply, air, conductance: lost / (supply - air), flow }),
      )
    }),
  ]
}

function loss(context: Context, take: Taking, loop: Thing): Sizing {
  const length = take.number(context.ask('length', loop))
  return chain(lossPerLength(context, take, loop), (each) =>
    recirculationLoss([{ name: 'return pipe', length, lossPerLength: each }]),
  )
}

function lossPerLength(context: Context, take: Taking, loop: Thing): Sizing {
  const { ask } = context
  const name = listedPipe(take.word(ask('material', loop)))
  const size = take.number(ask('size', loop))
  const insulated = take.word(ask('insulated', loop)) === 'yes'
  const thickness = insulated ? take.number(ask('insulationThickness', loop)) : 0
  return pipeHeatLoss({
    outsideDiameter: (name === undefined ? undefined : pipeSize(name, size)?.outside) ?? NaN,
    water: delivered(context, take),
    air,
    ...(insulated ? { insulation: { thickness, conductivity } } : {}),
    surface: { emissivity },
  })
}
