import { checkInstallation } from '../../src/check-installation.js'
import { base } from '../../src/base.js'
import { openRulebook, type Rulebook } from '../../src/rulebook/index.js'
import { openFile } from '../houses/open-house.js'
import { larkspur } from './houses.js'
import { heldBy, timesOf } from './measure.js'
import { printTable, spokenSize, spokenTime, times } from './table.js'

const saltmarrow = openFile('shared/overlays/saltmarrow.yaml') as Readonly<Record<string, unknown>>
const document = { ...larkspur.document, jurisdiction: { ...larkspur.document.jurisdiction, authorities: ['town-1'] } }

/** A rulebook for a whole state costs a house little: towns that it does not name are passed over. */
export async function compareTowns(): Promise<void> {
  const [one, many] = [townsNamed(1), townsNamed(300)]
  const [small, large] = [openWith(one), openWith(many)]
  const time = await timesOf({
    openOne: () => openWith(one),
    openMany: () => openWith(many),
    checkOne: () => checkInstallation(document, small, larkspur),
    checkMany: () => checkInstallation(document, large, larkspur),
  })
  printTable('Towns in one rulebook, one of them named by the house', [
    ['', '1 town', '300 towns', 'ratio'],
    row('opening the rulebook', [time.openOne, time.openMany], spokenTime),
    row('one check', [time.checkOne, time.checkMany], spokenTime),
    row('memory of the rulebook', [heldBy(20, () => openWith(one)), heldBy(2, () => openWith(many))], spokenSize),
  ])
}

function row(
  title: string,
  [one, many]: readonly [number, number],
  speak: (value: number) => string,
): readonly string[] {
  return [title, speak(one), speak(many), times(many / one)]
}

function townsNamed(count: number): readonly Readonly<Record<string, unknown>>[] {
  return Array.from({ length: count }, (_, index) => ({ ...saltmarrow, overlay: `town-${index + 1}` }))
}

function openWith(overlays: readonly Readonly<Record<string, unknown>>[]): Rulebook {
  return openRulebook({ ruleSets: [base], overlays })
}
