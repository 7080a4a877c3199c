import type { Context } from '../../facts/index.js'
import { chimneyFlue, waterHeater, type Thing } from '../../model/index.js'
import { largestFlue, orphanedFlueRatio } from '../../sizing/index.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'

/** The fuel gas code (IFGC 503.5.5, read): a flue is at most so many times the smallest draft hood on it. */
const mostRatio = 7

/** How a flue stands to the heaters that stay on it. */
export function chimneySizes(context: Context): readonly SizeLine[] {
  return context.listed(chimneyFlue).things.flatMap((flue) => {
    const of = flue.id
    if (hooded(context, flue).length === 0) return []
    return [
      sizeLine({ name: 'flue over the smallest draft hood on it', of }, 'number', (take) =>
        orphanedFlueRatio({
          flueArea: take.number(context.ask('area', flue)),
          outletDiameters: outlets(context, take, flue),
        }),
      ),
      sizeLine({ name: 'largest flue for the draft hoods on it', of }, 'area', (take) =>
        largestFlue({ outletDiameters: outlets(context, take, flue), mostRatio }),
      ),
    ]
  })
}

function hooded({ ask, listed }: Context, flue: Thing): readonly Thing[] {
  return listed(waterHeater).things.filter((one) => {
    const [into, venting] = [ask('flue', one), ask('venting', one)]
    return into.state === 'word' && into.word === flue.id && venting.state === 'word' && venting.word === 'draft-hood'
  })
}

/** Diameters of the draft hoods; one that is not listed may be smaller. */
function outlets(context: Context, take: Taking, flue: Thing): readonly number[] {
  take.all(waterHeater.name, context.listed(waterHeater))
  return hooded(context, flue).map((one) => Math.sqrt((4 / Math.PI) * take.number(context.ask('draftHoodArea', one))))
}
