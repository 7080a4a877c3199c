import type { ComponentWritten, InstallationWritten } from '../../src/model/index.js'

type Lines = NonNullable<InstallationWritten['lines']>
type Spaces = NonNullable<InstallationWritten['spaces']>

interface Floor {
  readonly components: readonly ComponentWritten[]
  readonly lines: Lines
  readonly spaces: Spaces
}

const pipe = { type: 'copper-M', size: '3/4', length: '10 ft' } as const
const frame = 6
const largestFloor = 49

/** A house of so many components: one boiler with what it needs, and floors of loops, each a valve and a radiator. */
export function bigHouse(count: number): InstallationWritten {
  const floors = floorsFor(count - frame)
  const components = [...aroundBoiler(floors.length), ...floors.flatMap((floor) => floor.components)]
  const lines = [...nearBoiler, ...floors.flatMap((floor) => floor.lines)]
  const spaces = floors.flatMap((floor) => floor.spaces)
  return {
    installation: 1,
    building: { occupancy: 'dwelling' },
    jurisdiction: { authorities: [] },
    heatingFluid: { antifreeze: 'no-antifreeze', additives: [] },
    complete: { all: components.length + lines.length + spaces.length, states: 0 },
    components,
    lines,
    spaces,
  }
}

function aroundBoiler(floors: number): readonly ComponentWritten[] {
  const strong = { maximumPressure: '150 psi' }
  return [
    { id: 'B1', kind: 'boiler', fuel: 'natural-gas', condensing: 'no', mawp: '50 psi', output: '70000 Btu/h' },
    { id: 'RV1', kind: 'reliefValve', protects: 'B1', setPressure: '30 psi', capacity: '300000 Btu/h' },
    { id: 'EX1', kind: 'expansionTank', volume: '10.3 gal', ...strong },
    { id: 'FV1', kind: 'fillValve', setPressure: '30 psi' },
    { id: ['HS', 'HR'], kind: 'header', branches: String(floors + 2), ...strong },
  ]
}

const nearBoiler: Lines = [
  { id: 'L-relief', medium: 'heatingWater', path: ['B1.relief', 'RV1.inlet'], pipe: { length: '0 ft' } },
  { id: 'L-supply', medium: 'heatingWater', path: ['B1.supply', 'HS.main'], pipe },
  { id: 'L-return', medium: 'heatingWater', path: ['HR.main', 'B1.return'], pipe },
  { id: 'L-tank', medium: 'heatingWater', path: ['HS.branch1', 'EX1.system'], pipe },
  { id: 'L-fill', medium: 'heatingWater', path: ['FV1.out', 'HR.branch1'], pipe },
]

/** Floors of loops until the components are used up: two headers a floor, two components a loop. */
function floorsFor(components: number): readonly Floor[] {
  const loops = Array.from({ length: Math.ceil(components / (2 + 2 * largestFloor)) }, (_, floor) =>
    Math.min(largestFloor, Math.floor((components - floor * (2 + 2 * largestFloor) - 2) / 2)),
  )
  return loops.map((count, floor) => floorOf(floor + 1, count))
}

function floorOf(floor: number, loops: number): Floor {
  const numbers = Array.from({ length: loops }, (_, loop) => loop + 1)
  const [supply, back] = [`M${floor}S`, `M${floor}R`]
  return {
    components: [
      { id: [supply, back], kind: 'header', branches: String(loops), maximumPressure: '125 psi' },
      ...numbers.flatMap((loop) => loopOf(floor, loop)),
    ],
    lines: [
      { id: `L-${supply}`, medium: 'heatingWater', path: [`HS.branch${floor + 1}`, `${supply}.main`], pipe },
      { id: `L-${back}`, medium: 'heatingWater', path: [`${back}.main`, `HR.branch${floor + 1}`], pipe },
      ...numbers.map((loop) => lineOf(floor, loop)),
    ],
    spaces: numbers.map((loop) => ({ id: `R${floor}-${loop}`, use: 'living', outsideSleeping: 'no' })),
  }
}

function loopOf(floor: number, loop: number): readonly ComponentWritten[] {
  return [
    { id: `BV${floor}-${loop}`, kind: 'balancingValve', maximumPressure: '150 psi' },
    {
      id: `E${floor}-${loop}`,
      kind: 'castIronRadiator',
      space: `R${floor}-${loop}`,
      topElevation: `${10 + (floor % 3)} ft`,
      waterVolume: '4 gal',
      maximumPressure: '60 psi',
    },
  ]
}

function lineOf(floor: number, loop: number): Lines[number] {
  const path = [`M${floor}S.branch${loop}`, `BV${floor}-${loop}`, `E${floor}-${loop}`, `M${floor}R.branch${loop}`]
  return { id: `L${floor}-${loop}`, medium: 'heatingWater', path, pipe }
}
