import type { FactHandle } from '../facts/index.js'
import { airFreeMonoxide } from './air-free-monoxide.js'
import { applianceInput } from './appliance-input.js'
import { carbonDioxideGap } from './carbon-dioxide-gap.js'
import { boilerOutput, designLoad, smallestZoneLoad } from './heat-load.js'
import { lineCarries } from './line-carries.js'
import { acidReachesMetalDrain } from './acid-reaches-metal-drain.js'
import { coldSideClosed } from './cold-side-closed.js'
import { condensateTreated } from './condensate-treated.js'
import { emergencySwitches } from './emergency-switches.js'
import { equivalentLength } from './equivalent-length.js'
import { linkedAlarms } from './linked-alarms.js'
import { load } from './load.js'
import { longestAllowed } from './longest-allowed.js'
import { lowestReliefSetting } from './lowest-relief-setting.js'
import { metalAheadOfNeutralizer } from './metal-ahead-of-neutralizer.js'
import { potableExpansion } from './potable-expansion.js'
import { reliefCapacity } from './relief-capacity.js'
import { reliefInVolume } from './relief-in-volume.js'
import { reliefOnBoiler } from './relief-on-boiler.js'
import { reliefWay } from './relief-way.js'
import { staticPressure } from './static-pressure.js'
import { treated } from './treated.js'
import { weakestPart } from './weakest-part.js'
import { tankWay } from './tank-way.js'
import { pumpOrder } from './pump-order.js'
import { soleConnection } from './sole-connection.js'
import { joinsAtTank } from './joins-at-tank.js'
import { gaugeInVolume } from './gauge-in-volume.js'
import { cutoffInVolume } from './cutoff-in-volume.js'
import { separatorWater } from './separator-water.js'
import { automaticVents } from './automatic-vents.js'
import { dirtSeparated } from './dirt-separated.js'
import { reliefAtGauge } from './relief-at-gauge.js'
import { heatsZones } from './heats-zones.js'
import { flowsAtRest } from './flows-at-rest.js'
import { wayRound } from './way-round.js'
import { oxygenReachesIron } from './oxygen-reaches-iron.js'
import { widestSpacing } from './widest-spacing.js'
import { canFreeze } from './can-freeze.js'

/** Derived amounts that the package brings along. */
export const builtInFacts: readonly FactHandle[] = Object.freeze([
  lowestReliefSetting,
  reliefCapacity,
  weakestPart,
  staticPressure,
  equivalentLength,
  longestAllowed,
  load,
  linkedAlarms,
  applianceInput,
  airFreeMonoxide,
  carbonDioxideGap,
  emergencySwitches,
  designLoad,
  boilerOutput,
  smallestZoneLoad,
  reliefAtGauge,
  widestSpacing,
])

/** Derived answers in words that the package brings along. */
export const builtInChecks: readonly FactHandle[] = Object.freeze([
  reliefInVolume,
  reliefWay,
  reliefOnBoiler,
  condensateTreated,
  acidReachesMetalDrain,
  metalAheadOfNeutralizer,
  coldSideClosed,
  potableExpansion,
  treated,
  lineCarries,
  tankWay,
  pumpOrder,
  soleConnection,
  joinsAtTank,
  gaugeInVolume,
  cutoffInVolume,
  separatorWater,
  automaticVents,
  dirtSeparated,
  heatsZones,
  flowsAtRest,
  wayRound,
  oxygenReachesIron,
  canFreeze,
])
