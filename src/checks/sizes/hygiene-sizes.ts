import type { Context } from '../../facts/index.js'
import { fixtureOutlet, indirectTank, line, mixingValve, recirculationLoop, type Thing } from '../../model/index.js'
import { aboveRegrowth, burnTime, legionellaTenthTime, type Sizing } from '../../sizing/index.js'
import { chain, over, stated } from './chain.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'
import { pipeWater } from './system-water.js'

/** How fast the water burns, where germs grow in it, and what stands in the pipe before it comes. */
export function hygieneSizes(context: Context): readonly SizeLine[] {
  const { ask, listed } = context
  return [
    ...listed(mixingValve).things.flatMap((valve) => burnLines(valve.id, 'as mixed', ask, valve, 'setTemperature')),
    ...listed(indirectTank).things.flatMap((tank) => storeLines(context, tank)),
    ...listed(recirculationLoop).things.map((loop) =>
      sizeLine({ name: 'return above where germs stop growing', of: loop.id }, 'temperatureDifference', (take) =>
        aboveRegrowth(take.number(ask('returnTemperature', loop))),
      ),
    ),
    ...listed(line)
      .things.filter((one) => one.medium === 'potableHot' && !hasNoLength(context, one))
      .flatMap((one) => standingLines(context, one)),
  ]
}

/** Fittings screwed together, such as a relief valve in its tapping. */
function hasNoLength({ ask }: Context, one: Thing): boolean {
  const length = ask('pipe.length', one)
  return length.state === 'number' && length.high === 0
}

/** Common practice for children. */
const partOfChild = 0.25

function burnLines(of: string, water: string, ask: Context['ask'], thing: Thing, field: string): readonly SizeLine[] {
  const line = (who: string, partOfAdult: number): SizeLine =>
    sizeLine({ name: `time to a burn of ${who}, water ${water}`, of }, 'time', (take) =>
      burnTime({ temperature: take.number(ask(field, thing)), list: 'second-degree', partOfAdult }),
    )
  return [line('an adult', 1), line('a child', partOfChild)]
}

function storeLines(context: Context, tank: Thing): readonly SizeLine[] {
  const { ask } = context
  const of = tank.id
  const stored = (take: Taking): number => take.number(ask('storedTemperature', tank))
  return [
    ...burnLines(of, 'as stored', ask, tank, 'storedTemperature'),
    sizeLine({ name: 'store above where germs stop growing', of }, 'temperatureDifference', (take) =>
      aboveRegrowth(stored(take)),
    ),
    sizeLine({ name: 'time in which the store leaves a tenth of the germs', of }, 'time', (take) =>
      legionellaTenthTime(stored(take)),
    ),
  ]
}

/** Water that turns lukewarm in the pipe to an outlet, and how long a person waits until it is gone. */
function standingLines(context: Context, one: Thing): readonly SizeLine[] {
  const of = one.id
  const outlets = (one.path ?? []).flatMap((item) => (item.type === 'unknown' ? [] : [item.component]))
  const outlet = outlets.flatMap((id) => context.find(id) ?? []).find(({ kind }) => kind.name === fixtureOutlet.name)
  const volume = (take: Taking): Sizing =>
    stated('water standing in the pipe', pipeWater(context, take, one).likely, 'm3')
  const standing = sizeLine({ name: 'water standing in the pipe', of }, 'volume', volume)
  if (outlet === undefined) return [standing]
  return [
    standing,
    sizeLine({ name: 'wait for hot water', of }, 'time', (take) => {
      const served = context.find(take.word(context.ask('fixture', outlet)))
      const flow = served === undefined ? NaN : take.number(context.ask('flow', served))
      return chain(volume(take), (water) => over('time', water, ['flow of the fixture', flow], 's'))
    }),
  ]
}
