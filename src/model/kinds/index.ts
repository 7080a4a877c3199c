export { builtInKinds } from './built-in-kinds.js'
export { airSeparator, type AirSeparatorWritten } from './air-separator.js'
export { airVent, type AirVentWritten } from './air-vent.js'
export { backflowPreventer, type BackflowPreventerWritten } from './backflow-preventer.js'
export { balancingValve, type BalancingValveWritten } from './balancing-valve.js'
export { boiler, type BoilerWritten } from './boiler.js'
export { castIronRadiator, type CastIronRadiatorWritten } from './cast-iron-radiator.js'
export { checkValve, type CheckValveWritten } from './check-valve.js'
export { chimneyFlue, type ChimneyFlueWritten } from './chimney-flue.js'
export { circulator, type CirculatorWritten } from './circulator.js'
export { coAlarm, type CoAlarmWritten } from './co-alarm.js'
export { condensatePump, type CondensatePumpWritten } from './condensate-pump.js'
export { condensateTrap, type CondensateTrapWritten } from './condensate-trap.js'
export { controlPanel, type ControlPanelWritten } from './control-panel.js'
export { dirtSeparator, type DirtSeparatorWritten } from './dirt-separator.js'
export { drainReceptor, type DrainReceptorWritten } from './drain-receptor.js'
export { evidence, type EvidenceWritten } from './evidence.js'
export { emergencySwitch, type EmergencySwitchWritten } from './emergency-switch.js'
export { expansionTank, type ExpansionTankWritten } from './expansion-tank.js'
export { fillValve, type FillValveWritten } from './fill-valve.js'
export { finTube, type FinTubeWritten } from './fin-tube.js'
export { fixture, type FixtureWritten } from './fixture.js'
export { gasConnector, type GasConnectorWritten } from './gas-connector.js'
export { header, type HeaderWritten } from './header.js'
export { indirectTank, type IndirectTankWritten } from './indirect-tank.js'
export { isolationValve, type IsolationValveWritten } from './isolation-valve.js'
export { line, type LineWritten } from './line.js'
export { mixingValve, type MixingValveWritten } from './mixing-valve.js'
export { neutralizer, type NeutralizerWritten } from './neutralizer.js'
export { opening } from './opening.js'
export { panelRadiator, type PanelRadiatorWritten } from './panel-radiator.js'
export { potableCheck, type PotableCheckWritten } from './potable-check.js'
export { potableExpansionTank, type PotableExpansionTankWritten } from './potable-expansion-tank.js'
export { potableStop, type PotableStopWritten } from './potable-stop.js'
export { potableTee, type PotableTeeWritten } from './potable-tee.js'
export { pressureGauge, type PressureGaugeWritten } from './pressure-gauge.js'
export { reading, type ReadingWritten } from './reading.js'
export { reliefValve, type ReliefValveWritten } from './relief-valve.js'
export { space, type SpaceWritten } from './space.js'
export { state, type StateWritten } from './state.js'
export { tee, type TeeWritten } from './tee.js'
export { test, type TestWritten } from './test.js'
export { thermostat, type ThermostatWritten } from './thermostat.js'
export { transformer, type TransformerWritten } from './transformer.js'
export { unitHeater, type UnitHeaterWritten } from './unit-heater.js'
export { ventFitting } from './vent-fitting.js'
export { ventRun, type VentRunWritten } from './vent-run.js'
export { ventTableRow } from './vent-table-row.js'
export { ventTermination, type VentTerminationWritten } from './vent-termination.js'
export { waterHeater, type WaterHeaterWritten } from './water-heater.js'
export { waterService, type WaterServiceWritten } from './water-service.js'
export { zone, type ZoneWritten } from './zone.js'
export { zoneValve, type ZoneValveWritten } from './zone-valve.js'
export { closable, emitter, fitting, fuelBurner, poweredDevice, pressurePart, ventedAppliance } from '../families.js'
export { corrodible, pipeType, type PipeType } from '../pipe-type.js'
export { ventMaterial, type VentMaterial } from '../vent-material.js'
export {
  building,
  fuel,
  fuelType,
  heatingFluid,
  installation,
  jurisdiction,
  site,
  water,
  type BuildingWritten,
  type FuelWritten,
  type HeatingFluidWritten,
  type JurisdictionWritten,
  type SiteWritten,
  type WaterWritten,
} from '../singletons/index.js'
export type { ComponentWritten, InstallationWritten } from '../installation-written.js'
