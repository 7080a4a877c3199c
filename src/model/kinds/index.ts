export { builtInKinds } from './built-in-kinds.js'
export { actuator, type ActuatorWritten } from './actuator.js'
export { airSeparator, type AirSeparatorWritten } from './air-separator.js'
export { airVent, type AirVentWritten } from './air-vent.js'
export { altitudeRow } from './altitude-row.js'
export { backflowPreventer, type BackflowPreventerWritten } from './backflow-preventer.js'
export { balancingValve, type BalancingValveWritten } from './balancing-valve.js'
export { boiler, type BoilerWritten } from './boiler.js'
export { bufferTank, type BufferTankWritten } from './buffer-tank.js'
export { builtInWaterHeater, type BuiltInWaterHeaterWritten } from './built-in-water-heater.js'
export { bypassValve, type BypassValveWritten } from './bypass-valve.js'
export { castIronBaseboard, type CastIronBaseboardWritten } from './cast-iron-baseboard.js'
export { castIronRadiator, type CastIronRadiatorWritten } from './cast-iron-radiator.js'
export { checkValve, type CheckValveWritten } from './check-valve.js'
export { chimneyFlue, type ChimneyFlueWritten } from './chimney-flue.js'
export { chimneyInlet } from './chimney-inlet.js'
export { circulator, type CirculatorWritten } from './circulator.js'
export { closelySpacedTees, type CloselySpacedTeesWritten } from './closely-spaced-tees.js'
export { coAlarm, type CoAlarmWritten } from './co-alarm.js'
export { combinedFillDevice, type CombinedFillDeviceWritten } from './combined-fill-device.js'
export { combustionAirOpening, type CombustionAirOpeningWritten } from './combustion-air-opening.js'
export { condensatePump, type CondensatePumpWritten } from './condensate-pump.js'
export { condensateTee, type CondensateTeeWritten } from './condensate-tee.js'
export { condensateTrap, type CondensateTrapWritten } from './condensate-trap.js'
export { controlPanel, type ControlPanelWritten } from './control-panel.js'
export { convector, type ConvectorWritten } from './convector.js'
export { cross, type CrossWritten } from './cross.js'
export { dirtSeparator, type DirtSeparatorWritten } from './dirt-separator.js'
export { divertingValve, type DivertingValveWritten } from './diverting-valve.js'
export { drainReceptor, type DrainReceptorWritten } from './drain-receptor.js'
export { drainValve, type DrainValveWritten } from './drain-valve.js'
export { efficiencyPoint } from './efficiency-point.js'
export { emergencySwitch, type EmergencySwitchWritten } from './emergency-switch.js'
export { evidence, type EvidenceWritten } from './evidence.js'
export { expansionTank, type ExpansionTankWritten } from './expansion-tank.js'
export { fanCoil, type FanCoilWritten } from './fan-coil.js'
export { fillValve, type FillValveWritten } from './fill-valve.js'
export { finTube, type FinTubeWritten } from './fin-tube.js'
export { fixture, type FixtureWritten } from './fixture.js'
export { fixtureOutlet, type FixtureOutletWritten } from './fixture-outlet.js'
export { flowSwitch, type FlowSwitchWritten } from './flow-switch.js'
export { gasBond, type GasBondWritten } from './gas-bond.js'
export { gasConnector, type GasConnectorWritten } from './gas-connector.js'
export { gasManifold, type GasManifoldWritten } from './gas-manifold.js'
export { gasMeter, type GasMeterWritten } from './gas-meter.js'
export { gasRegulator, type GasRegulatorWritten } from './gas-regulator.js'
export { gasShutoff, type GasShutoffWritten } from './gas-shutoff.js'
export { gasTee, type GasTeeWritten } from './gas-tee.js'
export { gasUnion, type GasUnionWritten } from './gas-union.js'
export { glycolFeeder, type GlycolFeederWritten } from './glycol-feeder.js'
export { header, type HeaderWritten } from './header.js'
export { heatExchanger, type HeatExchangerWritten } from './heat-exchanger.js'
export { heatingControl, type HeatingControlWritten } from './heating-control.js'
export { heatingMixingValve, type HeatingMixingValveWritten } from './heating-mixing-valve.js'
export { hoseOutlet, type HoseOutletWritten } from './hose-outlet.js'
export { hydraulicSeparator, type HydraulicSeparatorWritten } from './hydraulic-separator.js'
export { indirectTank, type IndirectTankWritten } from './indirect-tank.js'
export { isolationValve, type IsolationValveWritten } from './isolation-valve.js'
export { line, type LineWritten } from './line.js'
export { lowWaterCutoff, type LowWaterCutoffWritten } from './low-water-cutoff.js'
export { mixingValve, type MixingValveWritten } from './mixing-valve.js'
export { networkGateway, type NetworkGatewayWritten } from './network-gateway.js'
export { neutralizer, type NeutralizerWritten } from './neutralizer.js'
export { opening } from './opening.js'
export { otherGasAppliance, type OtherGasApplianceWritten } from './other-gas-appliance.js'
export { panelRadiator, type PanelRadiatorWritten } from './panel-radiator.js'
export { potableCheck, type PotableCheckWritten } from './potable-check.js'
export { potableExpansionTank, type PotableExpansionTankWritten } from './potable-expansion-tank.js'
export { potableHeader, type PotableHeaderWritten } from './potable-header.js'
export { potableStop, type PotableStopWritten } from './potable-stop.js'
export { potableTee, type PotableTeeWritten } from './potable-tee.js'
export { pressureGauge, type PressureGaugeWritten } from './pressure-gauge.js'
export { pressureReducer, type PressureReducerWritten } from './pressure-reducer.js'
export { pumpPoint } from './pump-point.js'
export { purgeValve, type PurgeValveWritten } from './purge-valve.js'
export { radiantFloor, type RadiantFloorWritten } from './radiant-floor.js'
export { reading, type ReadingWritten } from './reading.js'
export { recirculationLoop, type RecirculationLoopWritten } from './recirculation-loop.js'
export { recirculationPump, type RecirculationPumpWritten } from './recirculation-pump.js'
export { relay, type RelayWritten } from './relay.js'
export { reliefValve, type ReliefValveWritten } from './relief-valve.js'
export { resetPoint } from './reset-point.js'
export { sedimentTrap, type SedimentTrapWritten } from './sediment-trap.js'
export { serviceSwitch, type ServiceSwitchWritten } from './service-switch.js'
export { space, type SpaceWritten } from './space.js'
export { state, type StateWritten } from './state.js'
export { strainer, type StrainerWritten } from './strainer.js'
export { tee, type TeeWritten } from './tee.js'
export { temperatureLimit, type TemperatureLimitWritten } from './temperature-limit.js'
export { test, type TestWritten } from './test.js'
export { thermometer, type ThermometerWritten } from './thermometer.js'
export { thermostat, type ThermostatWritten } from './thermostat.js'
export { thermostaticValve, type ThermostaticValveWritten } from './thermostatic-valve.js'
export { towelRadiator, type TowelRadiatorWritten } from './towel-radiator.js'
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
export {
  backflowDevice,
  closable,
  emitter,
  fillDevice,
  fitting,
  fuelBurner,
  gasAppliance,
  heatingValve,
  hotWaterSource,
  poweredDevice,
  pressurePart,
  ventedAppliance,
  waterVessel,
} from '../families.js'
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
