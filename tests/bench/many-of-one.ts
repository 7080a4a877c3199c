import { gatherFacts } from '../../src/facts/index.js'
import { judge } from '../../src/judging/index.js'
import { readInstallation } from '../../src/model/index.js'
import { twoTowns } from './houses.js'
import { timesOf } from './measure.js'
import { printTable, spokenTime } from './table.js'

type Written = Readonly<Record<string, unknown>>

const [few, many] = [100, 400]

/** One of each with what belongs to it, connected to nothing else. */
const groups: Readonly<Record<string, (at: number) => Written>> = {
  'boilers and relief valves': (at) => ({
    components: [
      { id: `B${at}`, kind: 'boiler', mawp: '50 psi' },
      { id: `RV${at}`, kind: 'reliefValve', protects: `B${at}`, setPressure: '30 psi' },
    ],
    lines: [{ id: `L${at}`, medium: 'heatingWater', path: [`B${at}.relief`, `RV${at}.inlet`] }],
  }),
  'spaces and alarms': (at) => ({
    components: [{ id: `CO${at}`, kind: 'coAlarm', space: `S${at}` }],
    spaces: [{ id: `S${at}`, outsideSleeping: 'yes' }],
  }),
  'fill valves and radiators': (at) => ({
    components: [
      { id: `FV${at}`, kind: 'fillValve', setPressure: '20 psi' },
      { id: `E${at}`, kind: 'castIronRadiator', topElevation: '10 ft' },
    ],
  }),
  'transformers, valves and states': (at) => ({
    components: [
      { id: `TX${at}`, kind: 'transformer', rating: '40 VA', feeds: [`ZV${at}`] },
      { id: `ZV${at}`, kind: 'zoneValve', power: '7 VA' },
    ],
    states: [{ name: `state ${at}`, energized: [`ZV${at}`] }],
  }),
  'indirect tanks': (at) => ({ components: [{ id: `T${at}`, kind: 'indirectTank', volume: '40 gal' }] }),
}

/** No house is like this, but a document may be: what grows with the square of one kind comes out here. */
export async function measureManyOfOne(): Promise<void> {
  const rows: string[][] = []
  for (const [name, group] of Object.entries(groups)) {
    const time = await timesOf({ few: judging(group, few), many: judging(group, many) })
    const exponent = Math.log(time.many / time.few) / Math.log(many / few)
    rows.push([name, spokenTime(time.few / few), spokenTime(time.many / many), exponent.toFixed(2)])
  }
  printTable('Many of one kind, facts and judging, time for each', [
    ['', String(few), String(many), 'exponent'],
    ...rows,
  ])
}

function judging(group: (at: number) => Written, count: number): () => unknown {
  const installation = readInstallation(documentOf(group, count), twoTowns.model)
  return () => judge(twoTowns, gatherFacts(installation, twoTowns.facts))
}

function documentOf(group: (at: number) => Written, count: number): Written {
  const groups = Array.from({ length: count }, (_, at) => group(at))
  const sections = [...new Set(groups.flatMap((one) => Object.keys(one)))]
  const lists = sections.map((section) => [section, groups.flatMap((one) => one[section] ?? [])] as const)
  return { installation: 1, jurisdiction: { authorities: ['saltmarrow'] }, ...Object.fromEntries(lists) }
}
