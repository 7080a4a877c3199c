import { describe, expect, it } from 'vitest'
import {
  csstCapacity,
  csstDrop,
  gasCapacity,
  gasCapacityHigh,
  sizeGasTree,
  tableCapacity,
  tableSize,
} from '../../../src/sizing/gas/index.js'
import { csstFlows, type GasTable, gasFlow, gasTable, gasTableNames } from '../../../src/tables/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'
import { whyOf } from '../why-of.js'

const cfh = si('volumeFlow', '1 cfh')
const feet = si('length', '1 ft')
const psi = si('pressure', '1 psi')
const inchOfWater = si('pressure', '1 in wc')
const heatingValue = 1025 * si('energyPerVolume', '1 Btu/ft3')
/** Heating value of the propane tables of the code. */
const propaneHeat = 2516 * si('energyPerVolume', '1 Btu/ft3')

interface Cell {
  readonly length: number
  readonly column: number
  readonly carries: number
}

function cellsOf({ rows }: GasTable): readonly Cell[] {
  return rows.flatMap(({ length, carries }) =>
    carries.flatMap((cell, column) => (cell === null ? [] : [{ length, column, carries: cell }])),
  )
}

describe('the shape of the tables', () => {
  it.each(gasTableNames)('%s: a cell for every size, longer carries less, wider carries more', (name) => {
    const table = gasTable(name)
    const cells = cellsOf(table)
    expect(cells.length).toBeGreaterThan(2)
    for (const { carries } of table.rows) expect(carries).toHaveLength(table.sizes.length)
    const pairs = cells.flatMap((one) => cells.map((other) => [one, other] as const))
    for (const [one, other] of pairs.filter(([a, b]) => a.column === b.column && a.length < b.length))
      expect(one.carries).toBeGreaterThanOrEqual(other.carries)
    for (const [one, other] of pairs.filter(([a, b]) => a.length === b.length && a.column < b.column))
      expect(one.carries).toBeLessThan(other.carries)
  })
})

describe('the equation of the code against its tables', () => {
  // Read and recalled cells; a cell is printed to two or three digits, so half a unit in its last place is allowed as well.
  const bound = { steel: 0.013, polyethylene: 0.012, copper: 0.025, csst: 0 }
  const lowTables = gasTableNames.map(gasTable).filter(({ inside, inlet }) => inside !== undefined && inlet !== '2 psi')

  it.each(lowTables.map((table) => [table.table, table] as const))('%s', (_, table) => {
    const gas = gasFlow(table.gas)
    for (const { length, column, carries } of cellsOf(table)) {
      const capacity = numberOf(gasCapacity({ drop: table.drop, insideDiameter: table.inside![column]!, length, gas }))
      const counted = table.counts === 'heatRate' ? capacity * propaneHeat : capacity
      const halfUnit = table.counts === 'heatRate' ? 0.5 * si('heatRate', '1 MBH') : 0.5 * cfh
      expect(Math.abs(counted - carries)).toBeLessThan(bound[table.pipe] * carries + halfUnit)
    }
  })

  it.each(['copper-natural-gas-17-inches', 'copper-natural-gas-2-psi'] as const)('%s', (name) => {
    const { drop, inside, ...table } = gasTable(name)
    for (const { length, column, carries } of cellsOf(gasTable(name))) {
      const pipe = { insideDiameter: inside![column]!, length, inlet: 2 * psi, atmosphere: 14.7 * psi }
      const capacity = numberOf(gasCapacityHigh({ drop, gas: gasFlow(table.gas), ...pipe }))
      expect(Math.abs(capacity / carries - 1)).toBeLessThan(0.012)
    }
  })

  // Read cells. The table for 3 psi follows the equation, that for 2 psi does not: -0.7 %, +2.8 % and +5.8 % for 1/2, 3/4, 1 in.
  const steelAt = (name: 'steel-natural-gas-2-psi' | 'steel-natural-gas-3-psi', inlet: number): readonly number[] => {
    const { drop, rows } = gasTable(name)
    return [0.622, 0.824, 1.049].map((bore, column) => {
      const pipe = { insideDiameter: bore * si('length', '1 in'), length: rows[0]!.length, atmosphere: 14.7 * psi }
      const capacity = gasCapacityHigh({ drop, gas: gasFlow('natural-gas'), inlet: inlet * psi, ...pipe })
      return numberOf(capacity) / rows[0]!.carries[column]! - 1
    })
  }

  it('steel at 3 psi follows the equation; at 2 psi only the table speaks', () => {
    for (const off of steelAt('steel-natural-gas-3-psi', 3)) expect(Math.abs(off)).toBeLessThan(0.01)
    expect(steelAt('steel-natural-gas-2-psi', 2).map((off) => Math.round(off * 1000) / 10)).toEqual([-0.7, 2.8, 5.8])
  })
})

describe('corrugated tubing', () => {
  const propane = gasTable('csst-propane-half-inch')
  const natural = gasTable('csst-natural-gas-half-inch')
  const capacity = (ehd: number, length: number): number =>
    numberOf(csstCapacity({ ehd, length, specificGravity: 0.6, drop: 0.5 * inchOfWater })) / cfh

  it('the tubings of the flow laws are those of the tables', () => {
    expect(csstFlows.map(({ ehd }) => ehd)).toEqual(propane.sizes)
    expect(natural.sizes).toEqual(propane.sizes)
  })

  // The laws were fitted to the propane table, read, in thousands of Btu/h over 1.581; from 150 ft on that table drops by up
  // to 8.5 % below any power law, and small cells are printed in whole thousands.
  it('the laws follow the propane table', () => {
    for (const { length, column, carries } of cellsOf(propane)) {
      const printed = carries / si('heatRate', '1 MBH')
      const off = Math.abs(capacity(propane.sizes[column]!, length) * 1.581 - printed)
      expect(off).toBeLessThan(0.02 * printed + 1 + (length > 100 * feet ? 0.075 * printed : 0))
    }
  })

  // Natural gas, recalled: apart from EHD 37 it is the propane table over 1.581. At EHD 37 the recalled table falls with the
  // root of the length, the propane table more steeply, so they part by 11 % at 25 ft and 27 % at 200 ft.
  it('the natural gas table is the propane table over 1.581, except EHD 37', () => {
    for (const { length, column, carries } of cellsOf(natural)) {
      const ehd = natural.sizes[column]!
      const ratio = carries / cfh / capacity(ehd, length)
      if (ehd !== 37) expect(Math.abs(carries / cfh - capacity(ehd, length))).toBeLessThan((0.06 * carries) / cfh + 0.5)
      else expect(ratio).toBeLessThan(1.28)
    }
    const [row] = natural.rows.filter(({ length }) => Math.abs(length - 200 * feet) < 1e-6)
    expect(row!.carries[natural.sizes.indexOf(37)]! / cfh / capacity(37, 200 * feet)).toBeGreaterThan(1.2)
  })

  it('what it carries at a drop loses that drop', () => {
    const run = { ehd: 30, length: 12, specificGravity: 0.6 }
    const flow = numberOf(csstCapacity({ ...run, drop: 100 }))
    expect(numberOf(csstDrop({ ...run, flow }))).toBeCloseTo(100, 9)
  })
})

describe('looking up', () => {
  const half = gasTable('steel-natural-gas-half-inch')

  // First house: longest way 62 ft, row 70: 1 in. 237, 3/4 126, 1/2 60 cfh.
  it.each([
    [1, 237],
    [0.75, 126],
    [0.5, 60],
  ])('size %s at 62 ft: the row at 70 ft, %s cfh', (size, expected) => {
    const found = tableCapacity({ table: half, size, length: 62 * feet })
    expect(numberOf(found) / cfh).toBeCloseTo(expected, 9)
    expect(found).toMatchObject({ assumed: ['inlet below 2 psi', '2018 IFGC Table 402.4(2) as recalled'] })
  })

  it('a length that was added up from feet stays in its row', () => {
    const length = 0.1 * feet + 0.2 * feet + 69.7 * feet
    expect(numberOf(tableCapacity({ table: half, size: 1, length })) / cfh).toBeCloseTo(237, 9)
  })

  // 2018 IFGC Appendix A, longest-length example at 60 ft and 0.5 in wc: 35 cfh 1/2, 75 3/4, 110 3/4, 135 3/4, 245 1 in.
  it.each([
    [35, 0.5],
    [75, 0.75],
    [110, 0.75],
    [135, 0.75],
    [245, 1],
  ])('%s cfh at 60 ft: size %s', (flow, expected) => {
    const size = tableSize({ table: half, load: flow * cfh * heatingValue, heatingValue, length: 60 * feet })
    expect(numberOf(size)).toBe(expected)
  })

  it('a cell that was not read sends to the next longer row; without one the table says so', () => {
    const six = gasTable('steel-natural-gas-six-inches')
    expect(numberOf(tableCapacity({ table: six, size: 1.25, length: 5 * feet })) / cfh).toBeCloseTo(2240, 9)
    expect(whyOf(tableCapacity({ table: six, size: 1.5, length: 20 * feet }))).toContain(
      'no figure for size 1.5 at 20 ft',
    )
    expect(whyOf(tableCapacity({ table: half, size: 1.1, length: 5 }))).toContain('has no size 1.1')
    expect(whyOf(tableCapacity({ table: half, size: 1, length: -5 }))).toContain('length of the gas pipe')
  })

  it('says when no size is enough, when no row is long enough and when the load cannot be', () => {
    const at = (load: number, length: number): string => whyOf(tableSize({ table: half, load, heatingValue, length }))
    expect(at(1e9, 10 * feet)).toContain('No size of 2018 IFGC Table 402.4(2)')
    expect(at(1e3, 300 * feet)).toContain('no figure')
    expect(at(-1, 10 * feet)).toContain('load of the gas pipe')
  })

  it('propane tables count heat', () => {
    const load = 100 * si('heatRate', '1 MBH')
    const size = tableSize({
      table: gasTable('csst-propane-half-inch'),
      load,
      heatingValue: propaneHeat,
      length: 25 * feet,
    })
    expect(numberOf(size)).toBe(23)
    expect(size).toMatchObject({ working: expect.arrayContaining([{ name: 'wanted', value: load, unit: 'W' }]) })
  })
})

describe('sizing a house', () => {
  const section = (id: string, after: string | undefined, length: number, input: number) => ({
    id,
    ...(after === undefined ? {} : { after }),
    length: length * feet,
    input: input * si('heatRate', '1 Btu/h'),
  })
  // First house: loads 153 of 237, 73 and 80 of 126, 59 of 60 cfh.
  const first = [
    section('G1', undefined, 24, 0),
    section('G2', 'G1', 12, 75_000),
    section('G3', 'G1', 18, 0),
    section('G4', 'G3', 20, 60_000),
    section('G5', 'G3', 8, 22_000),
  ]
  const half = gasTable('steel-natural-gas-half-inch')
  const house = { sections: first, table: half, heatingValue }

  it('longest length: every section is read at 62 ft and what is fitted is enough', () => {
    const tree = sizeGasTree({ ...house, method: 'longest-length' })
    if (!tree.ok) throw new Error(tree.why)
    expect(
      tree.sections.map(({ id, load, length, size }) => [
        id,
        Math.round(load / heatingValue / cfh),
        Math.round(length / feet),
        numberOf(size),
      ]),
    ).toEqual([
      ['G1', 153, 62, 1],
      ['G2', 73, 62, 0.75],
      ['G3', 80, 62, 0.75],
      ['G4', 59, 62, 0.5],
      ['G5', 21, 62, 0.5],
    ])
    for (const [index, fitted] of [1, 0.75, 0.75, 0.5, 0.5].entries()) {
      const { carries, load } = tree.sections[index]!
      expect(numberOf(carries(fitted))).toBeGreaterThanOrEqual(load / heatingValue)
    }
  })

  it('branch length: a branch is read at its own farthest outlet, the way to the farthest at the longest', () => {
    const tree = sizeGasTree({ ...house, method: 'branch-length' })
    if (!tree.ok) throw new Error(tree.why)
    expect(tree.sections.map(({ id, length }) => [id, Math.round(length / feet)])).toEqual([
      ['G1', 62],
      ['G2', 36],
      ['G3', 62],
      ['G4', 62],
      ['G5', 50],
    ])
  })

  it.each([
    ['No gas section is listed', []],
    ['called G1', [...first, section('G1', undefined, 3, 0)]],
    ['G9, which is not listed', [...first, section('G6', 'G9', 3, 0)]],
    ['feeds itself', [section('A', 'B', 3, 0), section('B', 'A', 3, 0)]],
    ['length of gas section A', [section('A', undefined, 0, 0)]],
    ['heat input at gas section A', [section('A', undefined, 1, -5)]],
  ])('refuses: %s', (named, sections) => {
    const tree = sizeGasTree({ ...house, sections, method: 'longest-length' })
    expect(tree.ok ? '' : tree.why).toContain(named)
  })
})
