export { condensingShare } from './condensing-season.js'
export { type CurvePoint, curveGap, curveShortfall, supplyOnCurve } from './control-curve.js'
export { emitterOutput } from './emitter-output.js'
export {
  castIronBaseboard,
  castIronRadiator,
  type EmitterRating,
  emitterRating,
  panelRadiator,
  withoutHeatingEffect,
} from './emitter-rating.js'
export { effectiveness, fanCoilOutput, type RatedCoil } from './fan-coil.js'
export { finTubeFactor, finTubeFlowFactor } from './fin-tube.js'
export { type FloorLaw, floorOutput, floorSurface, floorWater } from './floor.js'
export { keptShare } from './kept-share.js'
export { logMeanDifference, type Mean, meanExcess } from './mean-excess.js'
export { mixedReturn, type ReturningFlow } from './mixed-return.js'
export { catalogOutput, lengthForLoad } from './output-needed.js'
export { outdoorForReturn, type ResetDesign, resetMean, resetReturn, resetSupply } from './outdoor-reset.js'
export { requiredWater } from './required-water.js'
export { returnAtSupply, zoneRunningShare } from './return-at-supply.js'
export { type DecidingRoom, decidingRoom, type RoomLine, roomTable } from './room-table.js'
export { type HeatedRoom, type PlacedEmitter, roomOutput, roomWater } from './rooms.js'
export { type FlowingEmitter, type FlowingZone, returnForLoad, supplyForLoad, systemSupply } from './supply-for-load.js'
export { tabulatedOutput } from './tabulated-output.js'
