export { airChangeConductance, leakage, type WindExposure } from './air-change.js'
export { airHeatCapacity } from './air-heat-capacity.js'
export { type BillBand, billConductance, billLoad, billLoadBand, type FuelBill, loadFromMean } from './bill-load.js'
export { conductanceOfLayers, type Layer } from './conductance.js'
export { crossCheck, widestAgreement } from './cross-check.js'
export { monthDegreeDays, monthMean } from './degree-days.js'
export {
  type EnergySignature,
  energySignature,
  type HeatingPeriod,
  type Signature,
  signatureLoad,
} from './energy-signature.js'
export { fuelOfYear } from './fuel-of-year.js'
export { outputAtRatio, outputOverLoad } from './installed-output.js'
export { loadAt, type LoadLine, loadShare } from './load-share.js'
export {
  type LoadBand,
  loadOfArea,
  type LoadPlausibility,
  loadPlausibility,
  loadSum,
  type UncertainLoad,
} from './load-sum.js'
export { type LossyRoom, roomConductance, roomLoad, type SlabEdge, type Surface } from './room-load.js'
export type { Spread } from './spread.js'
export type { StraightFit } from './straight-fit.js'
export { type BilledPeriod, variableBase, type VariableBaseFit } from './variable-base.js'
export { type ClimateMonth, type WeatherBin, type WeatherBins, weatherBins } from './weather-bins.js'
