import { checkInstallation } from '../../src/check-installation.js'
import { base } from '../../src/base.js'
import { openRulebook, type Rulebook } from '../../src/rulebook/index.js'
import { openFile } from '../houses/open-house.js'
import { larkspur } from './houses.js'
import { heldBy, timeOf } from './measure.js'
import { printTable, spokenSize, spokenTime, times } from './table.js'

const saltmarrow = openFile('shared/overlays/saltmarrow.yaml') as Readonly<Record<string, unknown>>
const document = { ...larkspur.document, jurisdiction: { ...larkspur.document.jurisdiction, authorities: ['town-1'] } }

/** A rulebook for a whole state costs a house little: towns that it does not name are passed over. */
export function compareTowns(): void {
  const [one, many] = [1, 300].map((count) => ({ count, overlays: townsNamed(count) }))
  if (one === undefined || many === undefined) return
  const opening = [one, many].map(({ overlays }) => timeOf(() => openWith(overlays)))
  const books = [one, many].map(({ overlays }) => openWith(overlays))
  const checking = books.map((rulebook) => timeOf(() => checkInstallation(document, rulebook, larkspur)))
  const held = [one, many].map(({ overlays }) => heldBy(() => openWith(overlays)))
  printTable('Towns in one rulebook, one of them named by the house', [
    ['', '1 town', '300 towns', ''],
    row('opening the rulebook', opening, spokenTime),
    row('one check', checking, spokenTime),
    row('memory of the rulebook', held, spokenSize),
  ])
}

function row(title: string, [one = 0, many = 0]: readonly number[], speak: (value: number) => string): readonly string[] {
  return [title, speak(one), speak(many), times(many / one)]
}

function townsNamed(count: number): readonly Readonly<Record<string, unknown>>[] {
  return Array.from({ length: count }, (_, index) => ({ ...saltmarrow, overlay: `town-${index + 1}` }))
}

function openWith(overlays: readonly Readonly<Record<string, unknown>>[]): Rulebook {
  return openRulebook({ ruleSets: [base], overlays })
}
