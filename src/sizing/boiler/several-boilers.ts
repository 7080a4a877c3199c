import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

/** A boiler of a plant. */
export interface PlantBoiler {
  readonly name: string
  /** W */
  readonly lowestOutput: number
  /** W */
  readonly highestOutput: number
}

/**
 * Output that is left with the largest boiler out.
 *
 * @returns W
 *
 * @example
 * outputWithOneOut([{ name: 'B1', lowestOutput: 8000, highestOutput: 80000 }]) // value 0
 */
export function outputWithOneOut(boilers: readonly PlantBoiler[]): Sizing {
  const why = whyNoPlant(boilers)
  if (why !== undefined) return cannotSize(why)
  const outputs = boilers.map(({ highestOutput }) => highestOutput)
  const value = boilers
    .toSorted((one, other) => other.highestOutput - one.highestOutput)
    .slice(1)
    .reduce((sum, { highestOutput }) => sum + highestOutput, 0)
  return sized({
    value,
    working: [
      ...boilers.map(({ name, highestOutput }) => ({ name, value: highestOutput, unit: 'W' })),
      { name: 'the largest', value: Math.max(...outputs), unit: 'W' },
      { name: 'output with it out', value, unit: 'W' },
    ],
    assumed: [],
    valid: true,
  })
}

/**
 * Part of the load that is still covered with the largest boiler out.
 *
 * @param load W
 * @example
 * // 80,000 Btu/h left of 186,000: 43 %
 * shareWithOneOut([{ name: 'B1', lowestOutput: 2345, highestOutput: 23446 }, second], 54511) // value 0.43
 */
export function shareWithOneOut(boilers: readonly PlantBoiler[], load: number): Sizing {
  const why = firstImpossible(['load', load, 'above zero'])
  if (why !== undefined) return cannotSize(why)
  const left = outputWithOneOut(boilers)
  if (!left.sized) return left
  const value = left.value / load
  return sized({
    ...left,
    value,
    working: [
      ...left.working,
      { name: 'load', value: load, unit: 'W' },
      { name: 'part of the load covered', value, unit: '1' },
    ],
  })
}

/**
 * Turndown of a plant: all boilers at their highest over the smallest at its lowest.
 *
 * @example
 * plantTurndown([{ name: 'B1', lowestOutput: 2081, highestOutput: 20515 }]) // value 9.86
 */
export function plantTurndown(boilers: readonly PlantBoiler[]): Sizing {
  const why =
    whyNoPlant(boilers) ??
    firstImpossible(
      ...boilers.map((each) => [`lowest output of ${each.name}`, each.lowestOutput, 'above zero'] as const),
    )
  if (why !== undefined) return cannotSize(why)
  const most = boilers.reduce((sum, { highestOutput }) => sum + highestOutput, 0)
  const least = Math.min(...boilers.map(({ lowestOutput }) => lowestOutput))
  return sized({
    value: most / least,
    working: [
      { name: 'all at their highest', value: most, unit: 'W' },
      { name: 'the smallest at its lowest', value: least, unit: 'W' },
      { name: 'turndown', value: most / least, unit: '1' },
    ],
    assumed: ['the boilers are staged'],
    valid: true,
  })
}

function whyNoPlant(boilers: readonly PlantBoiler[]): string | undefined {
  if (boilers.length === 0) return 'A plant without boilers has no output.'
  return firstImpossible(
    ...boilers.flatMap(({ name, lowestOutput, highestOutput }) => [
      [`lowest output of ${name}`, lowestOutput, 'zero or more'] as const,
      [`highest above the lowest output of ${name}`, highestOutput - lowestOutput, 'zero or more'] as const,
    ]),
  )
}
