import type { GasFlow } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { csstDrop } from './csst.js'
import { type GasRun, type GasSection, gasTree } from './gas-tree.js'
import { gasOutlet } from './high-pressure.js'
import { gasDrop } from './low-pressure.js'
import { lowPressure } from './units.js'

/** A section with the pipe it is made of. */
export interface PipedSection extends GasSection {
  /** A smooth bore in m, or corrugated tubing by its EHD. */
  readonly bore: { readonly insideDiameter: number } | { readonly ehd: number }
  /** Pa, gauge, that a regulator at its end holds. */
  readonly regulatedTo?: number
}

interface FiringHouse {
  readonly sections: readonly PipedSection[]
  readonly gas: GasFlow
  /** J/m3 of gas at 60 F. */
  readonly heatingValue: number
  /** Pa, gauge, behind the meter. */
  readonly delivery: number
  /** Pa, absolute, of the air around. */
  readonly atmosphere: number
}

/** Pressures at the ends of the sections, or why there are none. */
export type GasPressures =
  | { readonly ok: true; readonly ends: readonly { readonly id: string; readonly pressure: Sizing }[] }
  | { readonly ok: false; readonly why: string }

/**
 * Pressure at the end of every gas section while all appliances fire: section by section from the meter, by the low-pressure
 * equation of the fuel gas code below 1.5 psi and by the high-pressure one above.
 *
 * @returns Pa, gauge; or why one of them cannot be, while the others are told
 *
 * @example
 * gasPressures({ sections, gas: gasFlow('natural-gas'), heatingValue: 38.19e6, delivery: 1743.6, atmosphere: 101353 })
 */
export function gasPressures({ sections, ...house }: FiringHouse): GasPressures {
  const why = firstImpossible(
    ['gas pressure behind the meter', house.delivery, 'above zero'],
    ['heating value of the gas', house.heatingValue, 'above zero'],
    ['pressure of the air', house.atmosphere, 'above zero'],
  )
  if (why !== undefined) return { ok: false, why }
  const tree = gasTree(sections)
  if (!tree.ok) return tree
  const pipes = new Map(sections.map((section) => [section.id, section]))
  const flows = new Map(tree.runs.map(({ section, load }) => [section.id, load / house.heatingValue]))
  return {
    ok: true,
    ends: tree.runs.map((run) => ({ id: run.section.id, pressure: alongWay(run, pipes, flows, house) })),
  }
}

type House = Omit<FiringHouse, 'sections'>

function alongWay(
  { way }: GasRun,
  pipes: ReadonlyMap<string, PipedSection>,
  flows: ReadonlyMap<string, number>,
  house: House,
): Sizing {
  const meter = sized({
    value: house.delivery,
    working: [{ name: 'behind the meter', value: house.delivery, unit: 'Pa', readAs: 'gas-pressure' }],
    assumed: [],
    valid: true,
  })
  return way.reduce<Sizing>((before, { id }) => {
    const pipe = pipes.get(id)
    return before.sized && pipe !== undefined ? atEnd(before, pipe, flows.get(id) ?? 0, house) : before
  }, meter)
}

function atEnd(before: Extract<Sizing, { sized: true }>, pipe: PipedSection, flow: number, house: House): Sizing {
  const plain = throughPipe(before.value, pipe, flow, house)
  if (!plain.sized) return cannotSize(`Gas section ${pipe.id}: ${plain.why}`)
  const { regulatedTo } = pipe
  if (regulatedTo !== undefined && regulatedTo > plain.value)
    return cannotSize(`Gas section ${pipe.id}: too little pressure reaches the regulator at its end.`)
  const value = regulatedTo ?? plain.value
  return sized({
    value,
    working: [
      ...before.working,
      { name: `lost along ${pipe.id}`, value: before.value - plain.value, unit: 'Pa', readAs: 'gas-pressure' },
      { name: `end of ${pipe.id}`, value, unit: 'Pa', readAs: 'gas-pressure' },
    ],
    assumed: [...new Set([...before.assumed, ...plain.assumed])],
    valid: before.valid && plain.valid,
  })
}

/** Pressure at the end of a pipe, before a regulator. */
function throughPipe(inlet: number, { bore, length }: PipedSection, flow: number, house: House): Sizing {
  if (inlet >= lowPressure) return underHighPressure(inlet, { bore, length }, flow, house)
  const { gas } = house
  const drop =
    'ehd' in bore
      ? csstDrop({ ...bore, length, flow, specificGravity: gas.specificGravity })
      : gasDrop({ ...bore, length, flow, gas })
  if (!drop.sized) return drop
  if (drop.value > inlet) return cannotSize('the pipe is too narrow: no pressure is left at its end.')
  return { ...drop, value: inlet - drop.value }
}

function underHighPressure(
  inlet: number,
  { bore, length }: Pick<PipedSection, 'bore' | 'length'>,
  flow: number,
  { gas, atmosphere }: House,
): Sizing {
  if ('ehd' in bore) return cannotSize('at this pressure only the table of its maker tells what the tubing loses.')
  return gasOutlet({ ...bore, length, flow, inlet, atmosphere, gas })
}
