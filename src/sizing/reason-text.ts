import type { UnitSystem } from '../units/index.js'
import { amountText } from './step-text.js'

/**
 * A sentence about a number that cannot be, with its numbers as the reader writes them.
 *
 * @example
 * reasonText('Water cannot return at 349.8166666666667 K.', 'ip') // 'Water cannot return at 170 F.'
 */
export function reasonText(why: string, system: UnitSystem): string {
  return why.replace(numbers, (_all, number: string, unit: string | undefined) =>
    amountText(Number(number), unit ?? '1', system),
  )
}

/** Numbers that stand by themselves, with the unit behind them; not those in ids, and none with thousands set apart. */
const numbers = /(?<![\w.,-])(-?\d+(?:\.\d+)?(?:e[+-]?\d+)?)(?: (Pa|K|m3\/s|m3|m|W|J))?(?!\w|[.,]\d)/g
