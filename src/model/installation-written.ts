import type { DocumentFrame } from './written.js'
import type { ActuatorWritten } from './kinds/actuator.js'
import type { AirSeparatorWritten } from './kinds/air-separator.js'
import type { AirVentWritten } from './kinds/air-vent.js'
import type { BackflowPreventerWritten } from './kinds/backflow-preventer.js'
import type { BalancingValveWritten } from './kinds/balancing-valve.js'
import type { BoilerWritten } from './kinds/boiler.js'
import type { BufferTankWritten } from './kinds/buffer-tank.js'
import type { BuiltInWaterHeaterWritten } from './kinds/built-in-water-heater.js'
import type { BypassValveWritten } from './kinds/bypass-valve.js'
import type { CastIronBaseboardWritten } from './kinds/cast-iron-baseboard.js'
import type { CastIronRadiatorWritten } from './kinds/cast-iron-radiator.js'
import type { CheckValveWritten } from './kinds/check-valve.js'
import type { ChimneyFlueWritten } from './kinds/chimney-flue.js'
import type { CirculatorWritten } from './kinds/circulator.js'
import type { CloselySpacedTeesWritten } from './kinds/closely-spaced-tees.js'
import type { CoAlarmWritten } from './kinds/co-alarm.js'
import type { CombinedFillDeviceWritten } from './kinds/combined-fill-device.js'
import type { CombustionAirOpeningWritten } from './kinds/combustion-air-opening.js'
import type { CondensatePumpWritten } from './kinds/condensate-pump.js'
import type { CondensateTeeWritten } from './kinds/condensate-tee.js'
import type { CondensateTrapWritten } from './kinds/condensate-trap.js'
import type { ControlPanelWritten } from './kinds/control-panel.js'
import type { ConvectorWritten } from './kinds/convector.js'
import type { CrossWritten } from './kinds/cross.js'
import type { DirtSeparatorWritten } from './kinds/dirt-separator.js'
import type { DivertingValveWritten } from './kinds/diverting-valve.js'
import type { DrainReceptorWritten } from './kinds/drain-receptor.js'
import type { DrainValveWritten } from './kinds/drain-valve.js'
import type { EmergencySwitchWritten } from './kinds/emergency-switch.js'
import type { EvidenceWritten } from './kinds/evidence.js'
import type { ExpansionTankWritten } from './kinds/expansion-tank.js'
import type { FanCoilWritten } from './kinds/fan-coil.js'
import type { FillValveWritten } from './kinds/fill-valve.js'
import type { FinTubeWritten } from './kinds/fin-tube.js'
import type { FixtureWritten } from './kinds/fixture.js'
import type { FixtureOutletWritten } from './kinds/fixture-outlet.js'
import type { FlowSwitchWritten } from './kinds/flow-switch.js'
import type { GasBondWritten } from './kinds/gas-bond.js'
import type { GasConnectorWritten } from './kinds/gas-connector.js'
import type { GasManifoldWritten } from './kinds/gas-manifold.js'
import type { GasMeterWritten } from './kinds/gas-meter.js'
import type { GasRegulatorWritten } from './kinds/gas-regulator.js'
import type { GasShutoffWritten } from './kinds/gas-shutoff.js'
import type { GasTeeWritten } from './kinds/gas-tee.js'
import type { GasUnionWritten } from './kinds/gas-union.js'
import type { GlycolFeederWritten } from './kinds/glycol-feeder.js'
import type { HeaderWritten } from './kinds/header.js'
import type { HeatExchangerWritten } from './kinds/heat-exchanger.js'
import type { HeatingControlWritten } from './kinds/heating-control.js'
import type { HeatingMixingValveWritten } from './kinds/heating-mixing-valve.js'
import type { HoseOutletWritten } from './kinds/hose-outlet.js'
import type { HydraulicSeparatorWritten } from './kinds/hydraulic-separator.js'
import type { IndirectTankWritten } from './kinds/indirect-tank.js'
import type { IsolationValveWritten } from './kinds/isolation-valve.js'
import type { LineWritten } from './kinds/line.js'
import type { LowWaterCutoffWritten } from './kinds/low-water-cutoff.js'
import type { MixingValveWritten } from './kinds/mixing-valve.js'
import type { NetworkGatewayWritten } from './kinds/network-gateway.js'
import type { NeutralizerWritten } from './kinds/neutralizer.js'
import type { OtherGasApplianceWritten } from './kinds/other-gas-appliance.js'
import type { PanelRadiatorWritten } from './kinds/panel-radiator.js'
import type { PotableCheckWritten } from './kinds/potable-check.js'
import type { PotableExpansionTankWritten } from './kinds/potable-expansion-tank.js'
import type { PotableHeaderWritten } from './kinds/potable-header.js'
import type { PotableStopWritten } from './kinds/potable-stop.js'
import type { PotableTeeWritten } from './kinds/potable-tee.js'
import type { PressureGaugeWritten } from './kinds/pressure-gauge.js'
import type { PressureReducerWritten } from './kinds/pressure-reducer.js'
import type { PurgeValveWritten } from './kinds/purge-valve.js'
import type { RadiantFloorWritten } from './kinds/radiant-floor.js'
import type { ReadingWritten } from './kinds/reading.js'
import type { RecirculationLoopWritten } from './kinds/recirculation-loop.js'
import type { RecirculationPumpWritten } from './kinds/recirculation-pump.js'
import type { RelayWritten } from './kinds/relay.js'
import type { ReliefValveWritten } from './kinds/relief-valve.js'
import type { SedimentTrapWritten } from './kinds/sediment-trap.js'
import type { ServiceSwitchWritten } from './kinds/service-switch.js'
import type { SpaceWritten } from './kinds/space.js'
import type { StateWritten } from './kinds/state.js'
import type { StrainerWritten } from './kinds/strainer.js'
import type { TeeWritten } from './kinds/tee.js'
import type { TemperatureLimitWritten } from './kinds/temperature-limit.js'
import type { TestWritten } from './kinds/test.js'
import type { ThermometerWritten } from './kinds/thermometer.js'
import type { ThermostatWritten } from './kinds/thermostat.js'
import type { ThermostaticValveWritten } from './kinds/thermostatic-valve.js'
import type { TowelRadiatorWritten } from './kinds/towel-radiator.js'
import type { TransformerWritten } from './kinds/transformer.js'
import type { UnitHeaterWritten } from './kinds/unit-heater.js'
import type { VentRunWritten } from './kinds/vent-run.js'
import type { VentTerminationWritten } from './kinds/vent-termination.js'
import type { WaterHeaterWritten } from './kinds/water-heater.js'
import type { WaterServiceWritten } from './kinds/water-service.js'
import type { ZoneWritten } from './kinds/zone.js'
import type { ZoneValveWritten } from './kinds/zone-valve.js'
import type {
  BuildingWritten,
  FuelWritten,
  HeatingFluidWritten,
  JurisdictionWritten,
  SiteWritten,
  WaterWritten,
} from './singletons/index.js'

/** A component of any built-in kind as the document holds it; `kind` tells which. */
export type ComponentWritten =
  | BoilerWritten
  | ReliefValveWritten
  | PressureGaugeWritten
  | IsolationValveWritten
  | BalancingValveWritten
  | CheckValveWritten
  | ZoneValveWritten
  | CirculatorWritten
  | AirSeparatorWritten
  | DirtSeparatorWritten
  | TeeWritten
  | HeaderWritten
  | ExpansionTankWritten
  | CastIronRadiatorWritten
  | FinTubeWritten
  | PanelRadiatorWritten
  | UnitHeaterWritten
  | AirVentWritten
  | IndirectTankWritten
  | WaterHeaterWritten
  | PotableExpansionTankWritten
  | MixingValveWritten
  | WaterServiceWritten
  | PotableStopWritten
  | PotableCheckWritten
  | PotableTeeWritten
  | BackflowPreventerWritten
  | FillValveWritten
  | ChimneyFlueWritten
  | VentRunWritten
  | VentTerminationWritten
  | NeutralizerWritten
  | CondensateTrapWritten
  | CondensatePumpWritten
  | DrainReceptorWritten
  | TransformerWritten
  | ThermostatWritten
  | ControlPanelWritten
  | CoAlarmWritten
  | EmergencySwitchWritten
  | GasConnectorWritten
  | LowWaterCutoffWritten
  | FlowSwitchWritten
  | TemperatureLimitWritten
  | ThermometerWritten
  | DrainValveWritten
  | PurgeValveWritten
  | StrainerWritten
  | CrossWritten
  | ThermostaticValveWritten
  | BypassValveWritten
  | HeatingMixingValveWritten
  | DivertingValveWritten
  | HydraulicSeparatorWritten
  | CloselySpacedTeesWritten
  | BufferTankWritten
  | HeatExchangerWritten
  | CastIronBaseboardWritten
  | ConvectorWritten
  | TowelRadiatorWritten
  | FanCoilWritten
  | RadiantFloorWritten
  | CombinedFillDeviceWritten
  | GlycolFeederWritten
  | PressureReducerWritten
  | BuiltInWaterHeaterWritten
  | FixtureOutletWritten
  | PotableHeaderWritten
  | HoseOutletWritten
  | RecirculationPumpWritten
  | RecirculationLoopWritten
  | CondensateTeeWritten
  | GasMeterWritten
  | GasRegulatorWritten
  | GasShutoffWritten
  | GasTeeWritten
  | GasManifoldWritten
  | SedimentTrapWritten
  | GasUnionWritten
  | GasBondWritten
  | OtherGasApplianceWritten
  | CombustionAirOpeningWritten
  | ServiceSwitchWritten
  | ActuatorWritten
  | RelayWritten
  | NetworkGatewayWritten
  | HeatingControlWritten

/**
 * An installation document as people and apps write it: plain text values, each with its own unit.
 * A section left out is unknown, not empty. Keys that begin with `x-` are kept and never judged.
 *
 * @example
 * const document: InstallationWritten = {
 *   installation: 1,
 *   components: [{ id: 'B1', kind: 'boiler', mawp: '50 psi' }],
 * }
 */
export interface InstallationWritten extends DocumentFrame {
  /** Where the house stands. */
  readonly site?: SiteWritten
  /** How the building is used, and its storeys. */
  readonly building?: BuildingWritten
  /** The water supply. */
  readonly water?: WaterWritten
  /** The fuel supply. */
  readonly fuel?: FuelWritten
  /** What the heating system is filled with. */
  readonly heatingFluid?: HeatingFluidWritten
  /** Authorities and code editions. */
  readonly jurisdiction?: JurisdictionWritten
  readonly components?: readonly ComponentWritten[]
  readonly lines?: readonly LineWritten[]
  readonly zones?: readonly ZoneWritten[]
  readonly spaces?: readonly SpaceWritten[]
  readonly fixtures?: readonly FixtureWritten[]
  readonly states?: readonly StateWritten[]
  readonly readings?: readonly ReadingWritten[]
  readonly tests?: readonly TestWritten[]
  readonly evidence?: readonly EvidenceWritten[]
  /** Things taken out by this job: described, not counted, outside the network. */
  readonly removed?: readonly ComponentWritten[]
  readonly [extension: `x-${string}`]: unknown
}
