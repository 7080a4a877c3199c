import type { KindSpec } from '../kind.js'
import { building, fuel, heatingFluid, installation, jurisdiction, site, water } from '../singletons/index.js'
import { actuator } from './actuator.js'
import { airSeparator } from './air-separator.js'
import { airVent } from './air-vent.js'
import { backflowPreventer } from './backflow-preventer.js'
import { balancingValve } from './balancing-valve.js'
import { boiler } from './boiler.js'
import { bufferTank } from './buffer-tank.js'
import { builtInWaterHeater } from './built-in-water-heater.js'
import { bypassValve } from './bypass-valve.js'
import { castIronBaseboard } from './cast-iron-baseboard.js'
import { castIronRadiator } from './cast-iron-radiator.js'
import { checkValve } from './check-valve.js'
import { chimneyFlue } from './chimney-flue.js'
import { circulator } from './circulator.js'
import { closelySpacedTees } from './closely-spaced-tees.js'
import { coAlarm } from './co-alarm.js'
import { combinedFillDevice } from './combined-fill-device.js'
import { combustionAirOpening } from './combustion-air-opening.js'
import { condensatePump } from './condensate-pump.js'
import { condensateTee } from './condensate-tee.js'
import { condensateTrap } from './condensate-trap.js'
import { controlPanel } from './control-panel.js'
import { convector } from './convector.js'
import { cross } from './cross.js'
import { dirtSeparator } from './dirt-separator.js'
import { divertingValve } from './diverting-valve.js'
import { drainReceptor } from './drain-receptor.js'
import { drainValve } from './drain-valve.js'
import { emergencySwitch } from './emergency-switch.js'
import { evidence } from './evidence.js'
import { expansionTank } from './expansion-tank.js'
import { fanCoil } from './fan-coil.js'
import { fillValve } from './fill-valve.js'
import { finTube } from './fin-tube.js'
import { fixture } from './fixture.js'
import { fixtureOutlet } from './fixture-outlet.js'
import { flowSwitch } from './flow-switch.js'
import { gasBond } from './gas-bond.js'
import { gasConnector } from './gas-connector.js'
import { gasManifold } from './gas-manifold.js'
import { gasMeter } from './gas-meter.js'
import { gasRegulator } from './gas-regulator.js'
import { gasShutoff } from './gas-shutoff.js'
import { gasTee } from './gas-tee.js'
import { gasUnion } from './gas-union.js'
import { glycolFeeder } from './glycol-feeder.js'
import { header } from './header.js'
import { heatExchanger } from './heat-exchanger.js'
import { heatingControl } from './heating-control.js'
import { heatingMixingValve } from './heating-mixing-valve.js'
import { hoseOutlet } from './hose-outlet.js'
import { hydraulicSeparator } from './hydraulic-separator.js'
import { indirectTank } from './indirect-tank.js'
import { isolationValve } from './isolation-valve.js'
import { line } from './line.js'
import { lowWaterCutoff } from './low-water-cutoff.js'
import { mixingValve } from './mixing-valve.js'
import { networkGateway } from './network-gateway.js'
import { neutralizer } from './neutralizer.js'
import { otherGasAppliance } from './other-gas-appliance.js'
import { panelRadiator } from './panel-radiator.js'
import { potableCheck } from './potable-check.js'
import { potableExpansionTank } from './potable-expansion-tank.js'
import { potableHeader } from './potable-header.js'
import { potableStop } from './potable-stop.js'
import { potableTee } from './potable-tee.js'
import { pressureGauge } from './pressure-gauge.js'
import { pressureReducer } from './pressure-reducer.js'
import { purgeValve } from './purge-valve.js'
import { radiantFloor } from './radiant-floor.js'
import { reading } from './reading.js'
import { recirculationLoop } from './recirculation-loop.js'
import { recirculationPump } from './recirculation-pump.js'
import { relay } from './relay.js'
import { reliefValve } from './relief-valve.js'
import { sedimentTrap } from './sediment-trap.js'
import { serviceSwitch } from './service-switch.js'
import { space } from './space.js'
import { state } from './state.js'
import { strainer } from './strainer.js'
import { tee } from './tee.js'
import { temperatureLimit } from './temperature-limit.js'
import { test } from './test.js'
import { thermometer } from './thermometer.js'
import { thermostat } from './thermostat.js'
import { thermostaticValve } from './thermostatic-valve.js'
import { towelRadiator } from './towel-radiator.js'
import { transformer } from './transformer.js'
import { unitHeater } from './unit-heater.js'
import { ventRun } from './vent-run.js'
import { ventTermination } from './vent-termination.js'
import { waterHeater } from './water-heater.js'
import { waterService } from './water-service.js'
import { zone } from './zone.js'
import { zoneValve } from './zone-valve.js'

/** Every kind that the package knows: components, other sections, singletons. Parts are found through their owners. */
export const builtInKinds: readonly KindSpec[] = Object.freeze([
  boiler,
  reliefValve,
  pressureGauge,
  isolationValve,
  balancingValve,
  checkValve,
  zoneValve,
  circulator,
  airSeparator,
  dirtSeparator,
  tee,
  header,
  expansionTank,
  castIronRadiator,
  finTube,
  panelRadiator,
  unitHeater,
  airVent,
  indirectTank,
  waterHeater,
  potableExpansionTank,
  mixingValve,
  waterService,
  potableStop,
  potableCheck,
  potableTee,
  backflowPreventer,
  fillValve,
  chimneyFlue,
  ventRun,
  ventTermination,
  neutralizer,
  condensateTrap,
  condensatePump,
  drainReceptor,
  transformer,
  thermostat,
  controlPanel,
  coAlarm,
  emergencySwitch,
  gasConnector,
  lowWaterCutoff,
  flowSwitch,
  temperatureLimit,
  thermometer,
  drainValve,
  purgeValve,
  strainer,
  cross,
  thermostaticValve,
  bypassValve,
  heatingMixingValve,
  divertingValve,
  hydraulicSeparator,
  closelySpacedTees,
  bufferTank,
  heatExchanger,
  castIronBaseboard,
  convector,
  towelRadiator,
  fanCoil,
  radiantFloor,
  combinedFillDevice,
  glycolFeeder,
  pressureReducer,
  builtInWaterHeater,
  fixtureOutlet,
  potableHeader,
  hoseOutlet,
  recirculationPump,
  recirculationLoop,
  condensateTee,
  gasMeter,
  gasRegulator,
  gasShutoff,
  gasTee,
  gasManifold,
  sedimentTrap,
  gasUnion,
  gasBond,
  otherGasAppliance,
  combustionAirOpening,
  serviceSwitch,
  actuator,
  relay,
  networkGateway,
  heatingControl,
  line,
  zone,
  space,
  fixture,
  state,
  reading,
  test,
  evidence,
  installation,
  site,
  building,
  water,
  fuel,
  heatingFluid,
  jurisdiction,
])
