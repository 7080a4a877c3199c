import type { DocumentFrame } from './written.js'
import type { AirSeparatorWritten } from './kinds/air-separator.js'
import type { AirVentWritten } from './kinds/air-vent.js'
import type { BackflowPreventerWritten } from './kinds/backflow-preventer.js'
import type { BalancingValveWritten } from './kinds/balancing-valve.js'
import type { BoilerWritten } from './kinds/boiler.js'
import type { CastIronRadiatorWritten } from './kinds/cast-iron-radiator.js'
import type { CheckValveWritten } from './kinds/check-valve.js'
import type { ChimneyFlueWritten } from './kinds/chimney-flue.js'
import type { CirculatorWritten } from './kinds/circulator.js'
import type { CoAlarmWritten } from './kinds/co-alarm.js'
import type { CondensatePumpWritten } from './kinds/condensate-pump.js'
import type { CondensateTrapWritten } from './kinds/condensate-trap.js'
import type { ControlPanelWritten } from './kinds/control-panel.js'
import type { DirtSeparatorWritten } from './kinds/dirt-separator.js'
import type { DrainReceptorWritten } from './kinds/drain-receptor.js'
import type { EmergencySwitchWritten } from './kinds/emergency-switch.js'
import type { EvidenceWritten } from './kinds/evidence.js'
import type { ExpansionTankWritten } from './kinds/expansion-tank.js'
import type { FillValveWritten } from './kinds/fill-valve.js'
import type { FinTubeWritten } from './kinds/fin-tube.js'
import type { FixtureWritten } from './kinds/fixture.js'
import type { GasConnectorWritten } from './kinds/gas-connector.js'
import type { HeaderWritten } from './kinds/header.js'
import type { IndirectTankWritten } from './kinds/indirect-tank.js'
import type { IsolationValveWritten } from './kinds/isolation-valve.js'
import type { LineWritten } from './kinds/line.js'
import type { MixingValveWritten } from './kinds/mixing-valve.js'
import type { NeutralizerWritten } from './kinds/neutralizer.js'
import type { PanelRadiatorWritten } from './kinds/panel-radiator.js'
import type { PotableCheckWritten } from './kinds/potable-check.js'
import type { PotableExpansionTankWritten } from './kinds/potable-expansion-tank.js'
import type { PotableStopWritten } from './kinds/potable-stop.js'
import type { PotableTeeWritten } from './kinds/potable-tee.js'
import type { PressureGaugeWritten } from './kinds/pressure-gauge.js'
import type { ReadingWritten } from './kinds/reading.js'
import type { ReliefValveWritten } from './kinds/relief-valve.js'
import type { SpaceWritten } from './kinds/space.js'
import type { StateWritten } from './kinds/state.js'
import type { TeeWritten } from './kinds/tee.js'
import type { TestWritten } from './kinds/test.js'
import type { ThermostatWritten } from './kinds/thermostat.js'
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
