import { checkInstallation } from '../../src/check-installation.js'
import { readInstallation } from '../../src/model/index.js'
import { bigHouse } from './big-house.js'
import { larkspur, twoTowns } from './houses.js'
import { heldBy } from './measure.js'
import { printTable, spokenSize } from './table.js'

/** What stays in memory while it is held. */
export function measureMemory(): void {
  const large = bigHouse(10_000)
  printTable('Memory held', [
    ['', 'Larkspur Lane', '10,000 components'],
    [
      'the installation as read',
      ...[
        heldBy(() => readInstallation(larkspur.document, twoTowns.model)),
        heldBy(() => readInstallation(large, twoTowns.model)),
      ].map(spokenSize),
    ],
    [
      'the report',
      ...[
        heldBy(() => checkInstallation(larkspur.document, twoTowns, larkspur)),
        heldBy(() => checkInstallation(large, twoTowns)),
      ].map(spokenSize),
    ],
  ])
}
