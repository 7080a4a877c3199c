import { describe, expect, it } from 'vitest'
import type { SizeLine } from '../../src/checks/index.js'
import { applyEdits, type Edit, type InstallationWritten } from '../../src/model/index.js'
import { sizeInstallation } from '../../src/size-installation.js'
import { parseQuantity, type QuantityName } from '../../src/units/index.js'
import { openEquipment, openSeed, openTowns } from '../houses/open-house.js'

type House = 'larkspur-lane' | 'coopers-stair'

const rulebook = openTowns('harrowmere')
const equipment = openEquipment()

function hydraulicLines(house: House, edits: readonly Edit[] = []): readonly SizeLine[] {
  const edited = applyEdits(openSeed(house), edits, rulebook.model)
  if (!edited.ok) throw new Error(edited.problems.map(({ message }) => message).join(' '))
  const document = { ...edited.document, installation: 1 } as InstallationWritten
  const { topics } = sizeInstallation(document, rulebook, { equipment })
  return topics.find(({ topic }) => topic === 'hydraulics')?.lines ?? []
}

function lineOf(lines: readonly SizeLine[], name: string, of?: string): SizeLine {
  const found = lines.find((line) => line.name === name && (of === undefined || line.of === of))
  if (found === undefined)
    throw new Error(`no ${name} of ${of ?? 'anything'} in ${lines.map((line) => line.name).join()}`)
  return found
}

function valueOf(lines: readonly SizeLine[], name: string, of?: string): number {
  const line = lineOf(lines, name, of)
  if (line.state !== 'sized') throw new Error(JSON.stringify(line))
  return line.value
}

type Row = readonly [
  house: House,
  name: string,
  of: string,
  is: string,
  quantity: QuantityName,
  near: number,
  source: string,
]

/*
 * Sources: D1 and D2 are two invented houses worked by hand. Their tables use an explicit friction formula above Re 2,300 at
 * 140 F; the library takes Colebrook with a straight line from Re 2,000 to 4,000, at the hottest mean of the fluid, 170 and
 * 180 F. Told 140 F instead, it finds the flows of both houses less than 3 % apart from these, but for Z3 of D2 (5 %), which
 * comes near Re 4,000. Z4 of D1 runs at Re 2,700, where the two formulas differ most: 10 % there, as the corrections allow.
 */
const rows: readonly Row[] = [
  ['larkspur-lane', 'pump head while heating', 'C1', '2.48 ft', 'head', 0.05, 'D1 duty heating'],
  ['larkspur-lane', 'pump head while hot water', 'C1', '14.88 ft', 'head', 0.05, 'D1 operating point, full speed'],
  ['larkspur-lane', 'flow while hot water', 'C1', '7.67 gpm', 'volumeFlow', 0.02, 'D1 operating point, full speed'],
  ['larkspur-lane', 'flow while heating', 'B1', '4.32 gpm', 'volumeFlow', 0.02, 'D1 operating point, 2.5 ft'],
  ['larkspur-lane', 'flow while heating', 'ZV1', '1.58 gpm', 'volumeFlow', 0.03, 'D1 operating point, 2.5 ft'],
  ['larkspur-lane', 'flow while heating', 'ZV2', '1.35 gpm', 'volumeFlow', 0.03, 'D1 operating point, 2.5 ft'],
  ['larkspur-lane', 'flow while heating', 'ZV3', '1.00 gpm', 'volumeFlow', 0.04, 'D1 operating point, 2.5 ft'],
  ['larkspur-lane', 'flow while heating', 'ZV4', '0.415 gpm', 'volumeFlow', 0.1, 'friction method, corrections 1'],
  ['larkspur-lane', 'highest velocity while hot water', 'L-coil', '2.82 ft/s', 'velocity', 0.02, 'D1 velocities'],
  ['coopers-stair', 'pump head while heating', 'C1', '7.48 ft', 'head', 0.05, 'D2 duty heating'],
  ['coopers-stair', 'flow while heating', 'C1', '8.17 gpm', 'volumeFlow', 0.02, 'D2 duty heating'],
  ['coopers-stair', 'pump head while hot water', 'C1', '19.5 ft', 'head', 0.05, 'D2 hot water, full speed'],
  ['coopers-stair', 'flow while hot water', 'C1', '9.83 gpm', 'volumeFlow', 0.02, 'D2 hot water, full speed'],
  ['coopers-stair', 'suction while heating', 'C1', '8.7 psi', 'pressure', 0.06, 'D2 suction while heating: 12 - 3.3'],
  ...['Z1', 'Z2', 'Z3', 'Z4', 'Z5'].map((of): Row => [
    'coopers-stair',
    'share of its design flow while heating',
    of,
    '100 %',
    'fraction',
    0.025,
    'corrections 2, D2 3: 99 to 101 % at 140 F',
  ]),
]

const found = { 'larkspur-lane': hydraulicLines('larkspur-lane'), 'coopers-stair': hydraulicLines('coopers-stair') }

describe('hydraulics of two houses, against working by hand', () => {
  it.each(rows)('%s: %s of %s is %s', (...row) => {
    const [house, name, of, is, quantity, near, source] = row
    const wanted = parseQuantity(is, quantity)
    if (!wanted.ok) throw new Error(is)
    const value = valueOf(found[house], name, of)
    expect(Math.abs(value / wanted.low - 1), `${value} for ${wanted.low}, ${source}`).toBeLessThanOrEqual(near)
  })

  it('the worst circuit of the first is Z1, as Colebrook has it, and of the second Z5', () => {
    expect(lineOf(found['larkspur-lane'], 'worst circuit while heating')).toMatchObject({ of: 'Z1', state: 'told' })
    expect(lineOf(found['coopers-stair'], 'worst circuit while heating')).toMatchObject({ of: 'Z5', state: 'told' })
  })

  // By hand the tank stands right at the outlet of the pump: 12 psi less 19.56 ft at the hot density, 8.38 psi, leaves 3.6.
  // Drawn is the tank behind the air separator: the 1.12 ft, or 0.48 psi, that the water loses on the way to TE4 are not taken
  // off at the inlet, which leaves 4.1.
  it('the pump that pushes towards its tank has little pressure left at its inlet on a hot-water call', () => {
    const suction = valueOf(found['coopers-stair'], 'suction while hot water', 'C1') / 6894.76
    expect(suction).toBeCloseTo(3.62 + 0.48, 1)
  })

  it('schedule 40 of steel pipe is said to be taken, and not where all pipe is copper', () => {
    const assumedOf = (lines: readonly SizeLine[]): readonly string[] => {
      const line = lineOf(lines, 'flow while heating', 'C1')
      return line.state === 'sized' ? line.assumed : []
    }
    const copper = sizeInstallation(separated('20 Cv', '3 Cv'), rulebook, { only: ['hydraulics'] }).topics[0]?.lines
    expect(assumedOf(found['larkspur-lane'])).toContain('steel and stainless pipe is schedule 40')
    expect(assumedOf(copper ?? []).join()).not.toContain('schedule')
  })

  it('no water runs by itself where the pump checks it, and some does where it does not', () => {
    const name = 'ghost flow with its valve open and no pump running'
    const open = hydraulicLines('larkspur-lane', [{ set: 'C1.checkBuiltIn', to: 'no' }])
    for (const zone of ['Z1', 'Z2', 'Z3', 'Z4']) {
      expect(valueOf(found['larkspur-lane'], name, zone)).toBe(0)
      expect(valueOf(open, name, zone)).toBeGreaterThan(0)
    }
  })

  it('the lowest pressure is none above the others of its state', () => {
    for (const lines of Object.values(found)) {
      const lowest = valueOf(lines, 'lowest pressure while heating')
      expect(lowest).toBeLessThanOrEqual(valueOf(lines, 'suction while heating'))
      expect(lowest).toBeLessThanOrEqual(valueOf(lines, 'pressure at the highest emitter drawn while heating'))
    }
  })
})

const risingCurve = {
  complete: 2,
  list: [
    { id: 'none', flow: '0 gpm', head: '10 ft' },
    { id: 'most', flow: '8 gpm', head: '14 ft' },
  ],
}

type Things = readonly Readonly<Record<string, unknown>>[]

describe('numbers that cannot be', () => {
  it.each([
    ['a pump curve that rises', 'components', { id: 'C1' }, { curve: risingCurve }, /^C1: .*curve rises/],
    ['a pump that crosses nothing', 'states', { name: 'heating' }, { open: [] }, /^C1 has no circuit/],
  ] as const)('%s is named, and the rest still computed', (_name, section, which, change, names) => {
    const document = openSeed('larkspur-lane') as InstallationWritten
    const things = (document[section] as Things).map((thing) =>
      Object.entries(which).every(([key, value]) => thing[key] === value) ? { ...thing, ...change } : thing,
    )
    const { topics } = sizeInstallation({ ...document, [section]: things }, rulebook, { equipment })
    const lines = topics.flatMap((topic) => topic.lines)
    const told = lineOf(lines, 'flows while heating')
    expect(told.state === 'impossible' ? told.why : told.state).toMatch(names)
    expect(lines.filter(({ state }) => state === 'sized').length).toBeGreaterThan(30)
  })

  it('a pipe of negative length is refused when the document is read, with its place', () => {
    expect(() => hydraulicLines('larkspur-lane', [{ set: 'L-z3.pipe.equivalentLength', to: '-5 ft' }])).toThrow(
      /equivalentLength {2}"-5 ft" cannot be: a length is never negative/,
    )
  })

  it('a zone without an emitter is named, and its flow is still told', () => {
    const lines = hydraulicLines('larkspur-lane', [{ set: 'Z4.emitters', to: [] }])
    const ghost = lineOf(lines, 'ghost flow with its valve open and no pump running', 'Z4')
    expect(ghost).toMatchObject({ state: 'impossible', why: 'The zone Z4 has no emitter that could cool its water.' })
    expect(valueOf(lines, 'flow while heating', 'ZV4')).toBeGreaterThan(0)
  })
})

/** A boiler circuit and a system circuit, each with a pump of its own, that meet in a hydraulic separator. */
function separated(boilerKv: string, systemKv: string): InstallationWritten {
  const pump = (id: string): object => ({
    id,
    kind: 'circulator',
    checkBuiltIn: 'yes',
    mode: 'constant-speed',
    hotWaterMode: 'same',
    curve: {
      complete: 2,
      list: [
        { id: 'none', flow: '0 gpm', head: '16 ft' },
        { id: 'most', flow: '16 gpm', head: '4 ft' },
      ],
    },
  })
  const line = (id: string, ...path: readonly string[]): object => ({
    id,
    medium: 'heatingWater',
    path,
    pipe: { type: 'copper-M', size: '1', equivalentLength: '40 ft' },
  })
  const document = {
    installation: 1,
    components: [
      {
        id: 'B1',
        kind: 'boiler',
        capped: ['gas', 'flue', 'intake', 'condensate', 'relief'],
        resistance: { flow: '10 gpm', head: '3 ft' },
      },
      pump('C1'),
      pump('C2'),
      { id: 'ZV1', kind: 'zoneValve', flowCoefficient: boilerKv },
      { id: 'ZV2', kind: 'zoneValve', flowCoefficient: systemKv },
      { id: 'HX1', kind: 'hydraulicSeparator' },
      { id: 'E1', kind: 'castIronRadiator', topElevation: '11 ft' },
    ],
    lines: [
      line('L1', 'B1.supply', 'C1', 'ZV1', 'HX1.boilerSupply'),
      line('L2', 'HX1.boilerReturn', 'B1.return'),
      line('L3', 'HX1.systemSupply', 'C2', 'ZV2', 'E1.in'),
      line('L4', 'E1.out', 'HX1.systemReturn'),
    ],
    complete: { all: 12, states: 1 },
    heatingFluid: { antifreeze: 'no-antifreeze', highestMean: '140 F' },
    zones: [{ id: 'Z1', valve: 'ZV2', emitters: ['E1'], designFlow: '5 gpm' }],
    states: [
      {
        name: 'heating',
        purpose: 'heating',
        open: ['ZV1', 'ZV2'],
        running: ['C1', 'C2'],
        load: '50000 Btu/h',
        supply: '160 F',
      },
    ],
  }
  return document as unknown as InstallationWritten
}

describe('two pumps through a hydraulic separator', () => {
  const linesFor = (boilerKv: string, systemKv: string): readonly SizeLine[] =>
    sizeInstallation(separated(boilerKv, systemKv), rulebook, { only: ['hydraulics'] }).topics[0]?.lines ?? []
  const supply = (160 - 32) / 1.8 + 273.15

  // Where all heat is kept, the load is what the boiler flow takes up between the return and the supply of the boiler.
  it.each([
    ['the boiler moves more: its own supply turns back', '20 Cv', '3 Cv'],
    ['the system moves more: its own return turns back', '3 Cv', '20 Cv'],
  ])('%s', (_name, boilerKv, systemKv) => {
    const lines = linesFor(boilerKv, systemKv)
    const [boilerFlow, systemFlow] = ['C1', 'C2'].map((id) => valueOf(lines, 'flow while heating', id))
    const back = valueOf(lines, 'return to the boiler while heating')
    const on = valueOf(lines, 'supply to the system while heating')
    const load = 50_000 * 0.29307107
    const rise = load / (983.2 * 4185 * (boilerFlow ?? NaN))
    expect((boilerFlow ?? 0) > (systemFlow ?? 0)).toBe(boilerKv === '20 Cv')
    expect(Math.abs(back - (supply - rise))).toBeLessThan(0.2)
    if (boilerKv === '20 Cv') expect(on).toBeCloseTo(supply, 6)
    else expect(on).toBeLessThan(supply - 1)
  })
})
