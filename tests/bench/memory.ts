import { checkInstallation } from '../../src/check-installation.js'
import { readInstallation } from '../../src/model/index.js'
import { bigHouse } from './big-house.js'
import { larkspur, twoTowns } from './houses.js'
import { heldBy } from './measure.js'
import { printTable, spokenSize } from './table.js'

/** What stays in memory while it is held. */
export function measureMemory(): void {
  const { document, equipment } = larkspur
  const large = bigHouse(10_000)
  const row = (name: string, small: number, big: number): readonly string[] => [
    name,
    spokenSize(small),
    spokenSize(big),
  ]
  printTable('Memory held', [
    ['', 'Larkspur Lane', '10,000 components'],
    row(
      'the installation as read',
      heldBy(50, () => readInstallation(document, twoTowns.model)),
      heldBy(1, () => readInstallation(large, twoTowns.model)),
    ),
    row(
      'the report',
      heldBy(50, () => checkInstallation(document, twoTowns, { equipment })),
      heldBy(1, () => checkInstallation(large, twoTowns)),
    ),
  ])
}
