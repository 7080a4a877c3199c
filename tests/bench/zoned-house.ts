import type { InstallationWritten } from '../../src/model/index.js'

/** A boiler, a pump and so many zones side by side, drawn with all that their flows ask for, in one declared state. */
export function zonedHouse(zones: number): InstallationWritten {
  const numbers = Array.from({ length: zones }, (_, index) => index + 1)
  const document = {
    installation: 1,
    components: [
      {
        id: 'B1',
        kind: 'boiler',
        capped: ['gas', 'flue', 'intake', 'condensate', 'relief'],
        resistance: { flow: `${2 * zones} gpm`, head: '3 ft' },
      },
      pumpFor(zones),
      { id: 'HS', kind: 'header', branches: zones },
      { id: 'HR', kind: 'header', branches: zones },
      ...numbers.flatMap((number) => [
        { id: `ZV${number}`, kind: 'zoneValve', flowCoefficient: '6 Cv' },
        { id: `E${number}`, kind: 'castIronRadiator', topElevation: '11 ft' },
      ]),
    ],
    lines: [
      lineOf('L-supply', ['B1.supply', 'C1', 'HS.main'], '2'),
      lineOf('L-return', ['HR.main', 'B1.return'], '2'),
      ...numbers.flatMap((number) => [
        lineOf(`L-out-${number}`, [`HS.branch${number}`, `ZV${number}`, `E${number}.in`], '3/4'),
        lineOf(`L-back-${number}`, [`E${number}.out`, `HR.branch${number}`], '3/4'),
      ]),
    ],
    complete: { all: 4 + 5 * zones, states: 1 },
    heatingFluid: { antifreeze: 'no-antifreeze', highestMean: '140 F' },
    zones: numbers.map((number) => ({
      id: `Z${number}`,
      valve: `ZV${number}`,
      emitters: [`E${number}`],
      designFlow: '1 gpm',
      designSupply: '150 F',
      designDifference: '20 F',
    })),
    states: [{ name: 'heating', purpose: 'heating', open: numbers.map((number) => `ZV${number}`), running: ['C1'] }],
  }
  return document as unknown as InstallationWritten
}

function pumpFor(zones: number): object {
  const points = [0, 0.5, 1].map((share) => ({
    id: `at-${share * 100}`,
    flow: `${2 * zones * share} gpm`,
    head: `${16 - 12 * share ** 2} ft`,
  }))
  return {
    id: 'C1',
    kind: 'circulator',
    checkBuiltIn: 'yes',
    mode: 'constant-speed',
    hotWaterMode: 'same',
    curve: { complete: 3, list: points },
  }
}

function lineOf(id: string, path: readonly string[], size: string): object {
  return { id, medium: 'heatingWater', path, pipe: { type: 'copper-M', size, equivalentLength: '40 ft' } }
}
