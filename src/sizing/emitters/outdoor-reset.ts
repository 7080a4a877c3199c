import { fallingRoot } from '../falling-root.js'
import { firstImpossible } from '../first-impossible.js'
import { type LoadLine, loadShare } from '../load/load-share.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/** A system on its coldest design day. */
export interface ResetDesign extends LoadLine {
  /** K indoors. */
  readonly room: number
  /** K */
  readonly supply: number
  /** K */
  readonly return: number
  /** Of its emitters: 1.3 for radiators. */
  readonly exponent: number
}

/**
 * Supply temperature that the emitters need at an outdoor temperature, with the flow as it is.
 *
 * @param outdoor K
 * @returns K
 *
 * @example
 * resetSupply({ designOutdoor: 258.15, balance: 293.15, room: 293.15, supply: 343.15, return: 328.15, exponent: 1.3 }, 273.15)
 * // value 325.07, or 51.92 C at 0 C
 */
export function resetSupply(design: ResetDesign, outdoor: number): Sizing {
  return resetAt(design, outdoor, 'supply')
}

/**
 * Return temperature that goes with it.
 *
 * @param outdoor K
 * @returns K
 */
export function resetReturn(design: ResetDesign, outdoor: number): Sizing {
  return resetAt(design, outdoor, 'return')
}

/**
 * Mean water temperature that the emitters need.
 *
 * @param outdoor K
 * @returns K
 */
export function resetMean(design: ResetDesign, outdoor: number): Sizing {
  return resetAt(design, outdoor, 'mean')
}

/**
 * Outdoor temperature above which the return stays below a temperature: where a boiler begins to condense.
 *
 * @param temperature K, of the return
 * @returns K; the design temperature where the return is always cooler, the balance temperature where it never is, not valid then
 *
 * @example
 * outdoorForReturn(design, 323.15) // value 264.885, or -8.265 C for 50 C
 */
export function outdoorForReturn(design: ResetDesign, temperature: number): Sizing {
  const why = whyNoDesign(design) ?? firstImpossible(['return temperature', temperature, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const above = (share: number): number => offset(design, share, 'return') + design.room
  const peak = shareOfWarmestReturn(design)
  const share = temperature >= above(peak) ? 1 : fallingRoot((part) => temperature - above(part), 0, peak)
  const value = design.balance - share * (design.balance - design.designOutdoor)
  return sized({
    value,
    working: [
      { name: 'part of the design load', value: share, unit: '1' },
      { name: 'return at that load', value: above(share), unit: 'K' },
      { name: 'outdoor temperature', value, unit: 'K' },
    ],
    assumed: ['constant flow'],
    valid: temperature <= above(peak) && temperature >= design.room,
  })
}

function resetAt(design: ResetDesign, outdoor: number, what: Water): Sizing {
  const why = whyNoDesign(design)
  if (why !== undefined) return cannotSize(why)
  const share = loadShare(design, outdoor)
  if (!share.sized) return share
  const above = offset(design, share.value, what)
  const value = design.room + above
  return sized({
    value,
    working: [
      ...share.working,
      { name: 'mean water above the room', value: offset(design, share.value, 'mean'), unit: 'K' },
      { name: 'half the drop of the water', value: halfDrop(design) * share.value, unit: 'K' },
      { name: what === 'mean' ? 'mean water temperature' : `${what} temperature`, value, unit: 'K' },
    ],
    assumed: ['constant flow', ...share.assumed],
    valid: share.valid,
  })
}

type Water = 'supply' | 'return' | 'mean'

function offset(design: ResetDesign, share: number, what: Water): number {
  const mean = ((design.supply + design.return) / 2 - design.room) * share ** (1 / design.exponent)
  const half = halfDrop(design) * share
  return what === 'mean' ? mean : what === 'supply' ? mean + half : mean - half
}

/** With a wide drop and a bowed curve the return is warmest before the coldest day. */
function shareOfWarmestReturn(design: ResetDesign): number {
  const { exponent } = design
  const [mean, half] = [offset(design, 1, 'mean'), halfDrop(design)]
  return exponent === 1 || half === 0 ? 1 : Math.min(1, (mean / (exponent * half)) ** (exponent / (exponent - 1)))
}

function halfDrop(design: ResetDesign): number {
  return (design.supply - design.return) / 2
}

function whyNoDesign(design: ResetDesign): string | undefined {
  const { room, supply, return: back, exponent, balance, designOutdoor } = design
  const why = firstImpossible(
    ['room temperature', room, 'above zero'],
    ['supply temperature', supply, 'above zero'],
    ['return temperature', back, 'above zero'],
    ['exponent of the emitters', exponent, 'above zero'],
    ['balance temperature', balance, 'above zero'],
    ['outdoor design temperature', designOutdoor, 'above zero'],
  )
  if (why !== undefined) return why
  if (exponent < 1) return `The exponent of the emitters cannot be ${exponent}: it is 1 or more.`
  if (back > supply) return `Water cannot return at ${back} K, warmer than its supply at ${supply} K.`
  if (back < room) return `Water at ${back} K cannot heat a room at ${room} K.`
  return balance > designOutdoor
    ? undefined
    : `The balance temperature cannot be ${balance} K: the design day has ${designOutdoor} K.`
}
