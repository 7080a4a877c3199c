import { firstImpossible } from '../first-impossible.js'
import type { Sized } from '../sized.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/** A part of the system and the water that it holds. */
export interface FilledPart {
  /** Such as `radiators` or `1-1/4 in. pipe`. */
  readonly name: string
  /** m3, at the least. */
  readonly least: number
  /** m3, as likely as not. */
  readonly likely: number
  /** m3, at the most; a figure of the maker or a measured pipe has all three the same. */
  readonly most: number
}

/** Water in the whole system: the likely amount, and between which bounds it lies when every guess goes the same way. */
export interface SystemVolume {
  readonly least: Sizing
  readonly likely: Sizing
  readonly most: Sizing
}

/**
 * Builds the water of a system up from its parts, each as sure as it is known.
 *
 * @returns m3 each
 *
 * @example
 * systemVolume([{ name: 'boiler', least: 0.01, likely: 0.01, most: 0.01 }]).likely // value 0.01
 */
export function systemVolume(parts: readonly FilledPart[]): SystemVolume {
  const why = parts.map(whyImpossible).find((one) => one !== undefined)
  if (why !== undefined) return { least: cannotSize(why), likely: cannotSize(why), most: cannotSize(why) }
  return {
    least: sized(sumOf(parts, 'least')),
    likely: sized(sumOf(parts, 'likely')),
    most: sized(sumOf(parts, 'most')),
  }
}

function whyImpossible({ name, least, likely, most }: FilledPart): string | undefined {
  const impossible = firstImpossible(
    [`least content of ${name}`, least, 'zero or more'],
    [`likely content of ${name}`, likely, 'zero or more'],
    [`highest content of ${name}`, most, 'zero or more'],
  )
  if (impossible !== undefined || (least <= likely && likely <= most)) return impossible
  return `The likely content of ${name} does not lie between its least and its highest.`
}

function sumOf(parts: readonly FilledPart[], bound: 'least' | 'likely' | 'most'): Sized {
  const value = parts.reduce((sum, part) => sum + part[bound], 0)
  const guessed = parts.filter(({ least, most }) => least < most)
  return {
    value,
    working: [
      ...parts.map((part) => ({ name: part.name, value: part[bound], unit: 'm3' })),
      { name: 'content of the system', value, unit: 'm3' },
    ],
    assumed: guessed.map(({ name }) => `the content of ${name} is estimated`),
    valid: parts.length > 0,
  }
}
