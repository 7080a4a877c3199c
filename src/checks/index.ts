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
import { hottestSupply } from './hottest-supply.js'
import { meltsSnow } from './melts-snow.js'
import { outputWithoutLargest } from './output-without-largest.js'
import { steadyLoad } from './steady-load.js'
import { wireLoss } from './wire-loss.js'
import { draftReadings } from './draft-readings.js'
import { inletsLeftOpen } from './inlets-left-open.js'
import { roomAirNeeded } from './room-air-needed.js'
import { calibrationAge } from './calibration-age.js'
import { tapping } from './tapping.js'
import { treated } from './treated.js'
import { weakestPart } from './weakest-part.js'

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
  tapping,
  calibrationAge,
  roomAirNeeded,
  inletsLeftOpen,
  draftReadings,
  wireLoss,
  steadyLoad,
  outputWithoutLargest,
  hottestSupply,
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
  meltsSnow,
])
