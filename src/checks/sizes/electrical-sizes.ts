import type { Context } from '../../facts/index.js'
import { poweredDevice, transformer, type Thing } from '../../model/index.js'
import { smallestTransformer, transformerUse, wireDrop, wireResistance } from '../../sizing/index.js'
import { si } from '../../units/index.js'
import { load } from '../load.js'
import { chain, over, stated } from './chain.js'
import { sizeLine, type SizeLine } from './size-line.js'

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
  return [...transformers, ...wired.map((one) => dropLine(context, one))]
}

function dropLine({ ask }: Context, one: Thing): SizeLine {
  return sizeLine({ name: 'voltage lost on its wire', of: one.id }, 'voltage', (take) =>
    chain(
      over('current', take.number(ask('power', one)), ['voltage', take.number(ask('voltage', one))], 'A'),
      (current) =>
        chain(
          wireResistance({ gauge: take.number(ask('wireGauge', one)), temperature: warm, stranded: false }),
          (resistance) => wireDrop({ resistance, current, length: take.number(ask('wireLength', one)) }),
        ),
    ),
  )
}
