import type { FactHandle } from '../facts/index.js'
import {
  flowShare,
  greatestRise,
  leastFlow,
  returnSeen,
  suctionPressure,
  velocity,
  highestVelocity,
} from './hydraulics/index.js'
import { airFreeMonoxide } from './air-free-monoxide.js'
import { backflowOrder } from './backflow-order.js'
import { applianceInput } from './appliance-input.js'
import { carbonDioxideGap } from './carbon-dioxide-gap.js'
import { boilerOutput, designLoad, smallestZoneLoad } from './heat-load.js'
import { connectedLoad } from './connected-load.js'
import { housePressure } from './house-pressure.js'
import { protectedKind } from './protected-kind.js'
import { coldSource } from './cold-source.js'
import { gasTrapPlace, gasUnionPlace } from './gas-place.js'
import { applianceAhead, shutoffAhead } from './regulator-order.js'
import { tempered } from './tempered.js'
import { heaterTemperatureRelief, tankTemperatureRelief } from './temperature-relief.js'
import { trapFirst } from './trap-first.js'
import { condensateAlone } from './condensate-alone.js'
import { lineCarries } from './line-carries.js'
import { acidReachesMetalDrain } from './acid-reaches-metal-drain.js'
import { coldSideClosed } from './cold-side-closed.js'
import { condensateTreated } from './condensate-treated.js'
import { drinkingWaterJoined } from './drinking-water-joined.js'
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
import { chargeGap, potableChargeGap } from './charge-gap.js'
import { designReturn } from './design-return.js'
import { outputAtDesign } from './emitter-output.js'
import { firstHourWater } from './first-hour-water.js'
import { pressureLeft, pressureLost } from './gas-pressure.js'
import { potableVolumeNeeded, swollenWater, volumeNeeded } from './tank-needed.js'
import { hottestSupply } from './hottest-supply.js'
import { meltsSnow } from './melts-snow.js'
import { outputWithoutLargest } from './output-without-largest.js'
import { steadyLoad } from './steady-load.js'
import { wireLoss } from './wire-loss.js'
import { draftReadings } from './draft-readings.js'
import { inletsLeftOpen } from './inlets-left-open.js'
import { outdoorAirEnough } from './outdoor-air-enough.js'
import { roomAirNeeded } from './room-air-needed.js'
import { calibrationAge } from './calibration-age.js'
import { tapping } from './tapping.js'
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
  volumeNeeded,
  swollenWater,
  potableVolumeNeeded,
  chargeGap,
  potableChargeGap,
  outputAtDesign,
  pressureLeft,
  pressureLost,
  designReturn,
  firstHourWater,
  housePressure,
  connectedLoad,
  tapping,
  calibrationAge,
  roomAirNeeded,
  inletsLeftOpen,
  draftReadings,
  wireLoss,
  steadyLoad,
  outputWithoutLargest,
  hottestSupply,
  reliefAtGauge,
  widestSpacing,
  leastFlow,
  velocity,
  highestVelocity,
  flowShare,
  returnSeen,
  condensateAlone,
  greatestRise,
  suctionPressure,
])

export { hydraulicsOf, type Hydraulics, type StateFlows } from './hydraulics/index.js'

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
  drinkingWaterJoined,
  backflowOrder,
  protectedKind,
  meltsSnow,
  tankWay,
  pumpOrder,
  soleConnection,
  joinsAtTank,
  gaugeInVolume,
  cutoffInVolume,
  separatorWater,
  automaticVents,
  outdoorAirEnough,
  dirtSeparated,
  coldSource,
  tempered,
  tankTemperatureRelief,
  heaterTemperatureRelief,
  trapFirst,
  gasTrapPlace,
  gasUnionPlace,
  shutoffAhead,
  applianceAhead,
  heatsZones,
  flowsAtRest,
  wayRound,
  oxygenReachesIron,
  canFreeze,
])
export { sizesOf, sizeTopics, type SizeTopic } from './sizes/size-topics.js'
export { assumption, type SizeHead, type SizeLine } from './sizes/size-line.js'
export type { Sizes, TopicSizes } from './sizes/sizes.js'
