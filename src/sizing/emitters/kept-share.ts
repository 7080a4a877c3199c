import { type EmitterObstacle, keptOutput, type KeptOutput } from '../../tables/index.js'
import { sized, type Sizing } from '../sizing.js'

/**
 * Part of its output that an emitter keeps with all that stands in its way; common practice.
 *
 * @param figure which figure of the ranges to take: `least` is the careful one
 *
 * @example
 * keptShare(['cabinet', 'metallic-paint'], 'likely') // value 0.72
 */
export function keptShare(obstacles: readonly EmitterObstacle[], figure: keyof KeptOutput): Sizing {
  const each = obstacles.map((obstacle) => ({ name: obstacle, value: keptOutput(obstacle)[figure], unit: '1' }))
  const value = each.reduce((product, step) => product * step.value, 1)
  return sized({
    value,
    working: [...each, { name: 'part of the output kept', value, unit: '1' }],
    assumed: obstacles.length === 0 ? ['nothing stands in the way'] : ['common practice for what stands in the way'],
    valid: true,
  })
}
