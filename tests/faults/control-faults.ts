import type { Edit } from '../../src/model/index.js'
import { set, type Fault } from './fault.js'

const control = (wrong: Readonly<Record<string, string>>): Edit => ({
  insert: {
    id: 'HC9',
    kind: 'heatingControl',
    boiler: 'B1',
    outdoorReset: 'enabled',
    sensorPlace: 'north-wall',
    sensorDistance: '10 ft',
    warmWeatherShutdown: '65 F',
    hotWaterPriority: 'yes',
    priorityLimit: '45 min',
    ...wrong,
  },
})

/** Faults of controls and of what feeds them. */
export const controlFaults: readonly Fault[] = [
  ['a control with nothing wrong', [control({})], []],
  ['an outdoor sensor in the sun', [control({ sensorPlace: 'sunny-wall' })], ['should fail boiler/sensor-place/HC9']],
  [
    'an outdoor sensor over the terminal',
    [control({ sensorDistance: '2 ft' })],
    ['should fail boiler/sensor-place/HC9'],
  ],
  ['heating all summer', [control({ warmWeatherShutdown: '100 F' })], ['advice fail boiler/warm-weather-shutdown/HC9']],
  ['hot water without priority', [control({ hotWaterPriority: 'no' })], ['should fail control/priority/HC9']],
  ['priority without end', [control({ priorityLimit: '720 min' })], ['should fail control/priority-limit/HC9']],
  ['a thermostat that needs the network', [set('TH2.worksOffline', 'no')], ['should fail control/offline/TH2']],
  ['two secondaries tied together', [set('TX1.secondaryJoined', 'yes')], ['must fail electrical/secondary-joined/TX1']],
  ['a bell transformer of no class', [set('TX1.classTwo', 'no')], ['must fail electrical/class-two/TX1']],
  [
    'a service switch without a mark',
    [{ insert: { id: 'SS9', kind: 'serviceSwitch', appliance: 'B1', inSight: 'yes', marked: 'no' } }],
    ['should fail electrical/switch-marked/SS9'],
  ],
]
