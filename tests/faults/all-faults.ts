import { boilerFaults } from './boiler-faults.js'
import { controlFaults } from './control-faults.js'
import { drinkingWaterFaults } from './drinking-water-faults.js'
import { electricalFaults } from './electrical-faults.js'
import { emitterFaults } from './emitter-faults.js'
import type { Fault } from './fault.js'
import { flueFaults } from './flue-faults.js'
import { heatingFaults } from './heating-faults.js'
import { paperFaults } from './paper-faults.js'
import { plantFaults } from './plant-faults.js'
import { sizeFaults } from './size-faults.js'
import { ventFaults } from './vent-faults.js'
import { waterFaults } from './water-faults.js'

/** Every fault that is planted alone in the clean house. */
export const faults: readonly Fault[] = [
  ...boilerFaults,
  ...controlFaults,
  ...drinkingWaterFaults,
  ...electricalFaults,
  ...emitterFaults,
  ...flueFaults,
  ...heatingFaults,
  ...paperFaults,
  ...plantFaults,
  ...sizeFaults,
  ...ventFaults,
  ...waterFaults,
]

/** Ids of the rules that fail on a planted fault. */
export const firedRules: ReadonlySet<string> = new Set(
  faults.flatMap(([, , lines]) => lines.flatMap((line) => / fail ([^/]+\/[^/]+)\//.exec(line)?.[1] ?? [])),
)
