import { boundsOf, rebound, type Answer, type Missing } from '../facts/index.js'
import { printQuantity, type UnitSystem } from '../units/index.js'

interface Named {
  readonly name: string
  readonly answer: Answer
}

interface Beside {
  readonly units: UnitSystem
  /** Others that may count too: they can only lower the answer. */
  readonly perhaps: readonly Answer[]
  /** There may be others of which nothing is known. */
  readonly more: boolean
  readonly missing: readonly Missing[]
}

/** The lowest of some pressures, of which at least one is known from above. Its witness is the one that decides. */
export function lowestOf(named: readonly Named[], { units, perhaps, more, missing }: Beside): Answer {
  const highs = named.map(({ answer }) => boundsOf(answer).high)
  const high = Math.min(...highs)
  const lows = [...named.map(({ answer }) => answer), ...perhaps].map((answer) => boundsOf(answer).low)
  const low = more ? -Infinity : Math.min(high, ...lows)
  const lowest = named[highs.indexOf(high)]
  const witness = lowest === undefined ? [] : [`${lowest.name} ${printQuantity(high, 'pressure', units)}`]
  return { ...rebound([], low, high), witness, missing: low === high ? [] : missing }
}
