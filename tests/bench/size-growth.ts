import { hydraulicsOf } from '../../src/checks/index.js'
import { contextIn, gatherFacts } from '../../src/facts/index.js'
import { installation as installationKind, readInstallation, type InstallationWritten } from '../../src/model/index.js'
import { sizeInstallation } from '../../src/size-installation.js'
import { openSeed } from '../houses/open-house.js'
import { larkspur, twoTowns } from './houses.js'
import { timesOf, type Work } from './measure.js'
import { printTable, spokenTime, times } from './table.js'
import { zonedHouse } from './zoned-house.js'

const counts = [4, 40, 400] as const

/** What every number of a house with two states costs, and how flows and their lines grow with the zones. */
export async function measureSizes(): Promise<void> {
  const { equipment } = larkspur
  const document = openSeed('coopers-stair') as InstallationWritten
  const all = await timesOf({
    every: () => sizeInstallation(document, twoTowns, { equipment }),
    hydraulics: () => sizeInstallation(document, twoTowns, { equipment, only: ['hydraulics'] }),
  })
  printTable('All sizes of a house of five zones, in all its states', [
    ['', 'time', 'share'],
    ['every topic', spokenTime(all.every), times(1)],
    ['hydraulics alone', spokenTime(all.hydraulics), times(all.hydraulics / all.every)],
  ])
  await measureGrowthOfSizes()
}

async function measureGrowthOfSizes(): Promise<void> {
  const houses = counts.map((count) => [count, zonedHouse(count)] as const)
  const sizes = await timesOf(worksOf(houses, (house) => sizeInstallation(house, twoTowns, { only: ['hydraulics'] })))
  const flows = await timesOf(worksOf(houses, solveAll))
  printTable('Sizes of one state of so many drawn zones, time for each zone', [
    ['', ...counts.map(String), 'exponent, of each step'],
    rowOf('reading the house and its flows', flows),
    rowOf('the same, and every line of hydraulics', sizes),
  ])
}

type House = readonly [count: number, document: InstallationWritten]

function worksOf(houses: readonly House[], work: (document: InstallationWritten) => unknown): Record<string, Work> {
  return Object.fromEntries(houses.map(([count, document]) => [String(count), () => work(document)]))
}

function solveAll(document: InstallationWritten): unknown {
  const facts = gatherFacts(readInstallation(document, twoTowns.model), twoTowns.facts)
  const house = facts.installation.things.get(installationKind.name)
  if (house === undefined) throw new Error('an installation is read without itself')
  const { states } = hydraulicsOf(contextIn(facts.catalogue, facts.whole, house))
  const open = states.find(({ solved }) => !solved)
  if (open !== undefined) throw new Error(JSON.stringify(open))
  return states
}

function rowOf(name: string, took: Readonly<Record<string, number>>): readonly string[] {
  const perZone = counts.map((count) => spokenTime((took[String(count)] ?? NaN) / count))
  const exponents = counts.slice(1).map((count, index) => {
    const before = counts[index] ?? count
    const ratio = (took[String(count)] ?? NaN) / (took[String(before)] ?? NaN)
    return (Math.log(ratio) / Math.log(count / before)).toFixed(2)
  })
  return [name, ...perZone, exponents.join(', ')]
}
