export { buffer, waterForRun } from './buffer.js'
export {
  burnerOffTime,
  burnerOnTime,
  burnerShare,
  burnerStarts,
  type Cycling,
  mostBurnerStarts,
} from './burner-cycle.js'
export { efficiencyAtReturn, type EfficiencyPoint, fuelSaved, makerEfficiency, seasonEfficiency } from './efficiency.js'
export { concurrentLoad, coolDown } from './hot-water-priority.js'
export { type BurnerHours, type BurnerYear, burnerYear, cyclesAbove } from './mild-weather.js'
export { type AltitudeLine, outputAtAltitude } from './output-at-altitude.js'
export { outputWithOneOut, type PlantBoiler, plantTurndown, shareWithOneOut } from './several-boilers.js'
export { boilerFlow, boilerRise } from './water-through-boiler.js'
