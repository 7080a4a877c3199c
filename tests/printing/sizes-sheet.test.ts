import { describe, expect, it } from 'vitest'
import type { SizeLine, Sizes } from '../../src/checks/index.js'
import { sizesSheet } from '../../src/printing/index.js'
import type { Step } from '../../src/sizing/index.js'

const pipes: readonly Step[] = [
  { name: 'L-1', value: 0.001, unit: 'm3' },
  { name: 'L-2', value: 0.002, unit: 'm3' },
  { name: 'content', value: 0.003, unit: 'm3' },
]

interface Words {
  readonly name: string
  readonly working: readonly Step[]
  readonly assumed?: readonly string[]
}

const line = ({ name, working, assumed = [] }: Words): SizeLine => ({
  name,
  state: 'sized',
  quantity: 'volume',
  value: working.at(-1)?.value ?? 0,
  working,
  assumed,
  valid: true,
})

const sizes = (lines: readonly SizeLine[], units: Sizes['units'] = 'si'): Sizes => ({
  advisory: 'advice',
  units,
  topics: [{ topic: 'expansion', lines }],
})

const rowsOf = (lines: readonly SizeLine[], units?: Sizes['units']): readonly (readonly string[])[] =>
  (sizesSheet(sizes(lines, units)).sections[0]?.items ?? []).map(({ rows }) =>
    rows.map(({ label, text }) => `${label}: ${text}`),
  )

describe('a page of sizes', () => {
  it('tells a run of steps once, carries its result from there on, and does not repeat the number of the head', () => {
    const wanted: Step = { name: 'part that takes it up', value: 0.75, unit: '1' }
    const tank: Step = { name: 'tank', value: 0.004, unit: 'm3' }
    const lines = [line({ name: 'water', working: pipes }), line({ name: 'tank', working: [...pipes, wanted, tank] })]
    expect(rowsOf(lines)).toEqual([
      ['Working: L-1: 1 L; L-2: 2 L; content: 3 L'],
      ['Working: content: 3 L (above); part that takes it up: 0.75'],
    ])
  })

  it('says of a working that was told already that it stands above', () => {
    const twice = [line({ name: 'one', working: pipes }), line({ name: 'other', working: pipes })]
    expect(rowsOf(twice)[1]).toEqual(['Working: as above'])
  })

  it('does not fold steps with other numbers', () => {
    const other = pipes.map((step) => ({ ...step, value: step.value * 2 }))
    expect(rowsOf([line({ name: 'one', working: pipes }), line({ name: 'other', working: other })])[1]).toEqual([
      'Working: L-1: 2 L; L-2: 4 L; content: 6 L',
    ])
  })

  it('says what is granted once, and what rests on an assumption each time', () => {
    const assumed = ['dry air', 'a value that the document only assumes']
    const working = pipes.slice(2)
    expect(rowsOf([line({ name: 'one', working, assumed }), line({ name: 'other', working, assumed })])).toEqual([
      ['Working: content: 3 L', 'Granted: dry air', 'Rests on: a value that the document only assumes'],
      ['Working: content: 3 L', 'Rests on: a value that the document only assumes'],
    ])
  })

  it.each([
    ['ip', 'gas: 250 cfh; left: 6.5 in wc; altitude: 0 ft; drip: 0.85 gph'],
    ['si', 'gas: 7.08 m3/h; left: 1.619 kPa; altitude: 0 m; drip: 3.22 L/h'],
  ] as const)('prints gas, altitudes and drips as they are read in %s', (units, text) => {
    const working: readonly Step[] = [
      { name: 'gas', value: 0.0019664, unit: 'm3/s', readAs: 'gas-flow' },
      { name: 'left', value: 1619.1, unit: 'Pa', readAs: 'gas-pressure' },
      { name: 'altitude', value: 0, unit: 'm', readAs: 'distance' },
      { name: 'drip', value: 8.938e-7, unit: 'm3/s', readAs: 'drip' },
    ]
    expect(rowsOf([line({ name: 'all', working })], units)).toEqual([[`Working: ${text}`]])
  })
})
