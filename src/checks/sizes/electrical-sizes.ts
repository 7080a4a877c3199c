import type { Context } from '../../facts/index.js'
import { poweredDevice, transformer, type Thing } from '../../model/index.js'
import {
  longestWire,
  smallestTransformer,
  transformerUse,
  wireDrop,
  wireResistance,
  type Sizing,
} from '../../sizing/index.js'
import { si } from '../../units/index.js'
import { load } from '../load.js'
import { chain, over, stated } from './chain.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'

const goodShare = 0.8
const warm = si('temperature', '167 F')

/** What each transformer delivers in its worst state, and what its longest wires lose. */
export function electricalSizes(context: Context): readonly SizeLine[] {
  const { ask, listed } = context
  const transformers = listed(transformer).things.flatMap((one) => [
    sizeLine({ name: 'most at once', of: one.id }, 'apparentPower', (take) => {
      const answer = ask(load, one)
      return stated((answer.witness ?? []).join(' + '), take.number(answer), 'VA')
    }),
    sizeLine({ name: 'share of its rating', of: one.id }, 'fraction', (take) =>
      transformerUse({ load: take.number(ask(load, one)), rating: take.number(ask('rating', one)) }),
    ),
    sizeLine({ name: 'rating that keeps it at 80 %', of: one.id }, 'apparentPower', (take) =>
      smallestTransformer({ load: take.number(ask(load, one)), share: goodShare }),
    ),
  ])
  const wired = listed(poweredDevice).things.filter((one) => ask('wireLength', one).state === 'number')
  return [...transformers, ...wired.flatMap((one) => wireLines(context, one))]
}

/** A tenth of the voltage; common practice. */
const mostLost = 0.1

function wireLines({ ask }: Context, one: Thing): readonly SizeLine[] {
  const of = one.id
  const onWire = (take: Taking, next: (circuit: { resistance: number; current: number }) => Sizing): Sizing => {
    const voltage = take.number(ask('voltage', one))
    const gauge = take.number(ask('wireGauge', one))
    return chain(over('current', take.number(ask('power', one)), ['voltage', voltage], 'A'), (current) =>
      chain(wireResistance({ gauge, temperature: warm, stranded: false }), (resistance) =>
        next({ resistance, current }),
      ),
    )
  }
  return [
    sizeLine({ name: 'voltage lost on its wire', of }, 'voltage', (take) => {
      const length = take.number(ask('wireLength', one))
      return onWire(take, (circuit) => wireDrop({ ...circuit, length }))
    }),
    sizeLine({ name: 'longest wire that loses a tenth of the voltage', of, readAs: 'distance' }, 'length', (take) => {
      const drop = mostLost * take.number(ask('voltage', one))
      return onWire(take, (circuit) => longestWire({ ...circuit, drop }))
    }),
  ]
}
