import type { KindSpec } from '../kind.js'
import { building, fuel, heatingFluid, installation, jurisdiction, site, water } from '../singletons/index.js'
import { airSeparator } from './air-separator.js'
import { airVent } from './air-vent.js'
import { backflowPreventer } from './backflow-preventer.js'
import { balancingValve } from './balancing-valve.js'
import { boiler } from './boiler.js'
import { castIronRadiator } from './cast-iron-radiator.js'
import { checkValve } from './check-valve.js'
import { chimneyFlue } from './chimney-flue.js'
import { circulator } from './circulator.js'
import { coAlarm } from './co-alarm.js'
import { condensatePump } from './condensate-pump.js'
import { condensateTrap } from './condensate-trap.js'
import { controlPanel } from './control-panel.js'
import { dirtSeparator } from './dirt-separator.js'
import { drainReceptor } from './drain-receptor.js'
import { emergencySwitch } from './emergency-switch.js'
import { evidence } from './evidence.js'
import { expansionTank } from './expansion-tank.js'
import { fillValve } from './fill-valve.js'
import { finTube } from './fin-tube.js'
import { fixture } from './fixture.js'
import { gasConnector } from './gas-connector.js'
import { header } from './header.js'
import { indirectTank } from './indirect-tank.js'
import { isolationValve } from './isolation-valve.js'
import { line } from './line.js'
import { mixingValve } from './mixing-valve.js'
import { neutralizer } from './neutralizer.js'
import { panelRadiator } from './panel-radiator.js'
import { potableCheck } from './potable-check.js'
import { potableExpansionTank } from './potable-expansion-tank.js'
import { potableStop } from './potable-stop.js'
import { potableTee } from './potable-tee.js'
import { pressureGauge } from './pressure-gauge.js'
import { reading } from './reading.js'
import { reliefValve } from './relief-valve.js'
import { space } from './space.js'
import { state } from './state.js'
import { tee } from './tee.js'
import { test } from './test.js'
import { thermostat } from './thermostat.js'
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
