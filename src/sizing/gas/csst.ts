import { type CsstFlow, csstFlow } from '../../tables/index.js'
import { firstImpossible } from '../first-impossible.js'
import type { Step } from '../sized.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { flowClaim, lengthClaim } from './smooth-pipe.js'
import { cubicFootPerHour, foot, inchOfWater } from './units.js'

/** A run of corrugated stainless steel tubing. */
export interface CsstRun {
  /** The designation of the tubing, such as 19. */
  readonly ehd: number
  /** m, with what its fittings count for. */
  readonly length: number
  /** Of the gas, relative to air. */
  readonly specificGravity: number
}

/**
 * Pressure that gas below 1.5 psi loses along corrugated tubing, by the power law of its published table.
 *
 * @returns Pa
 *
 * @example
 * csstDrop({ ehd: 18, length: 3.048, specificGravity: 0.6, flow: 0.000645 }) // value 128, 82 cfh at 0.51 in wc
 */
export function csstDrop({ flow, ...run }: CsstRun & { readonly flow: number }): Sizing {
  const law = csstFlow(run.ehd)
  if (law === undefined) return cannotSize(unlisted(run.ehd))
  const why = firstImpossible(flowClaim(flow)) ?? impossibleRun(run)
  if (why !== undefined) return cannotSize(why)
  const asListed = flow / cubicFootPerHour / lighter(run)
  const value = (asListed / law.factor) ** (1 / law.exponent) * (run.length / foot) * inchOfWater
  return sized({
    value,
    working: [
      ...steps(run, law),
      { name: 'gas flow', value: flow, unit: 'm3/s', readAs: 'gas-flow' },
      { name: 'drop', value, unit: 'Pa', readAs: 'gas-pressure' },
    ],
    assumed: [likeTable],
    valid: true,
  })
}

/**
 * Gas below 1.5 psi that corrugated tubing carries at a drop.
 *
 * @returns m3/s at 60 F
 *
 * @example
 * csstCapacity({ ehd: 18, length: 3.048, specificGravity: 0.6, drop: 124.5 }) // value 0.000637, or 81 cfh
 */
export function csstCapacity({ drop, ...run }: CsstRun & { readonly drop: number }): Sizing {
  const law = csstFlow(run.ehd)
  if (law === undefined) return cannotSize(unlisted(run.ehd))
  const why = firstImpossible(['drop along the tubing', drop, 'zero or more']) ?? impossibleRun(run)
  if (why !== undefined) return cannotSize(why)
  const slope = drop / inchOfWater / (run.length / foot)
  const value = law.factor * slope ** law.exponent * lighter(run) * cubicFootPerHour
  return sized({
    value,
    working: [
      ...steps(run, law),
      { name: 'drop', value: drop, unit: 'Pa', readAs: 'gas-pressure' },
      { name: 'gas', value, unit: 'm3/s', readAs: 'gas-flow' },
    ],
    assumed: [likeTable],
    valid: true,
  })
}

const likeTable = 'tubing like that of the published table; the table of its maker governs'

function unlisted(ehd: number): string {
  return `No flow law is kept for corrugated tubing of EHD ${ehd}.`
}

function impossibleRun({ length, specificGravity }: CsstRun): string | undefined {
  return firstImpossible(lengthClaim(length), ['specific gravity of the gas', specificGravity, 'above zero'])
}

/** How much more a lighter gas than that of the law flows. */
function lighter({ specificGravity }: CsstRun): number {
  return Math.sqrt(0.6 / specificGravity)
}

function steps({ length }: CsstRun, { factor, exponent }: CsstFlow): readonly Step[] {
  return [
    { name: 'factor of the tubing', value: factor, unit: '1' },
    { name: 'exponent of the tubing', value: exponent, unit: '1' },
    { name: 'length', value: length, unit: 'm' },
  ]
}
