import { firstImpossible } from '../first-impossible.js'
import { type Step } from '../sized.js'

interface SpeedChange {
  /** m3/s */
  readonly flow: number
  /** m */
  readonly head: number
  /** W, at the shaft; the electrical power falls less. */
  readonly power: number
  /** New speed over the one these belong to. */
  readonly speedRatio: number
}

/** A pump at another speed, or the sentence that says which number is impossible. */
export type PumpAtSpeed =
  | {
      readonly sized: true
      readonly flow: number
      readonly head: number
      readonly power: number
      readonly working: readonly Step[]
      readonly assumed: readonly string[]
    }
  | { readonly sized: false; readonly why: string }

/**
 * Flow, head and shaft power of a pump at another speed, by the affinity laws.
 *
 * @returns m3/s, m, W
 *
 * @example
 * pumpAtSpeed({ flow: 0.0252, head: 38.4, power: 13_050, speedRatio: 1700 / 3500 }) // power 1,495
 */
export function pumpAtSpeed({ flow, head, power, speedRatio }: SpeedChange): PumpAtSpeed {
  const why = firstImpossible(
    ['flow', flow, 'zero or more'],
    ['head', head, 'zero or more'],
    ['shaft power', power, 'zero or more'],
    ['ratio of the speeds', speedRatio, 'zero or more'],
  )
  if (why !== undefined) return { sized: false, why }
  const other = { flow: flow * speedRatio, head: head * speedRatio ** 2, power: power * speedRatio ** 3 }
  return {
    sized: true,
    ...other,
    working: [
      { name: 'ratio of the speeds', value: speedRatio, unit: '1' },
      { name: 'flow', value: other.flow, unit: 'm3/s' },
      { name: 'head', value: other.head, unit: 'm', readAs: 'head' },
      { name: 'shaft power', value: other.power, unit: 'W' },
    ],
    assumed: ['affinity laws: equal efficiency at both speeds'],
  }
}
