import { describe, expect, it } from 'vitest'
import { ask, boundsOf, missingOf, type Written } from './asking.js'

interface Vent {
  readonly run?: Written
  readonly fittings?: Written
  readonly table?: Written
}

const row2 = { id: 'row-2', size: '2', maximumLength: '70 ft', elbow90: '5 ft', elbow45: '3 ft' }
const row3 = { id: 'row-3', size: '3', maximumLength: '150 ft', elbow90: '5 ft', elbow45: '2.5 ft' }
const bends = (ninety: string, fortyFive: string): Written => ({
  complete: '2',
  list: [
    { id: 'quarter', type: 'elbow90', count: ninety },
    { id: 'eighth', type: 'elbow45', count: fortyFive },
  ],
})

const house = ({
  run = {},
  fittings = bends('7', '2'),
  table = { complete: '2', list: [row2, row3] },
}: Vent): Written => ({
  components: [
    { id: 'B1', kind: 'boiler', ventTable: table },
    {
      id: 'VR1',
      kind: 'ventRun',
      side: 'exhaust',
      appliance: 'B1',
      size: '2',
      straightLength: '38 ft',
      fittings,
      ...run,
    },
  ],
})

const length = (vent: Vent): readonly string[] => boundsOf(ask(house(vent), 'VR1', 'equivalentLength'), 'length')
const longest = (vent: Vent): readonly string[] => boundsOf(ask(house(vent), 'VR1', 'longestAllowed'), 'length')

describe('equivalent length of a vent run', () => {
  // Corrected figures of the two sample houses: as built and as approved, exhaust and intake.
  it.each([
    ['38 ft', '7', '2', '79 ft'],
    ['38 ft', '4', '0', '58 ft'],
    ['19.5 ft', '3', '2', '40.5 ft'],
    ['17 ft', '3', '0', '32 ft'],
  ])('%s straight, %s quarter and %s eighth bends: %s', (straightLength, ninety, fortyFive, expected) => {
    expect(length({ run: { straightLength }, fittings: bends(ninety, fortyFive) })).toEqual([expected])
  })

  it('tells the terms', () => {
    expect(ask(house({}), 'VR1', 'equivalentLength').witness).toEqual([
      '38 ft straight',
      '7 elbow90 x 5 ft',
      '2 elbow45 x 3 ft',
    ])
  })

  it('the row of its own size counts', () => {
    expect(length({ run: { size: '3' } })).toEqual(['78 ft'])
    expect(longest({ run: { size: '3' } })).toEqual(['150 ft'])
  })

  it('elbows listed are not all elbows', () => {
    const fittings = { list: [{ id: 'quarter', type: 'elbow90', count: '7' }] }
    expect(length({ fittings })).toEqual(['73 ft', 'no upper limit'])
    expect(missingOf(ask(house({ fittings }), 'VR1', 'equivalentLength'))).toEqual(['VR1.fittings'])
  })

  it('an elbow of unknown angle lies between the two', () => {
    const fittings = { complete: '1', list: [{ id: 'bends', count: '7' }] }
    expect(length({ fittings })).toEqual(['59 ft', '73 ft'])
  })

  it('a straight run needs no table', () => {
    expect(length({ fittings: { complete: '0', list: [] }, run: { size: 'unknown' } })).toEqual(['38 ft'])
  })

  it('elbows without a table add nobody knows what, but not less than nothing', () => {
    const noTable = { table: { list: [] } }
    expect(length(noTable)).toEqual(['38 ft', 'no upper limit'])
    expect(missingOf(ask(house(noTable), 'VR1', 'equivalentLength'))).toEqual(['B1.ventTable'])
    expect(ask(house(noTable), 'VR1', 'equivalentLength').witness).toContain('7 elbow90 x unknown')
    expect(length({ run: { size: '4' } })).toEqual(['38 ft', 'no upper limit'])
    expect(missingOf(ask(house({ run: { size: '4' } }), 'VR1', 'equivalentLength'))).toEqual(['B1.ventTable'])
    expect(length({ run: { appliance: 'unknown' } })).toEqual(['38 ft', 'no upper limit'])
    expect(length({ run: { straightLength: 'unknown' } })).toEqual(['41 ft', 'no upper limit'])
  })

  it('elbows that count nothing stay nothing, however many', () => {
    const table = { complete: '1', list: [{ ...row2, elbow90: '0 ft' }] }
    expect(length({ table, fittings: { complete: '1', list: [{ id: 'quarter', type: 'elbow90' }] } })).toEqual([
      '38 ft',
    ])
  })
})

describe('longest length that the maker allows', () => {
  it('is that of the row for the size', () => {
    expect(longest({})).toEqual(['70 ft'])
  })

  it('is nothing for a size that a complete table does not list', () => {
    expect(longest({ run: { size: '4' } })).toEqual(['0 ft'])
    expect(ask(house({ run: { size: '4' } }), 'VR1', 'longestAllowed').witness).toEqual([
      'the vent table of B1 lists no size 4',
    ])
  })

  it('is not known for a size that an incomplete table does not list', () => {
    const table = { list: [row2, row3] }
    expect(longest({ run: { size: '4' }, table })).toEqual(['unknown'])
    expect(missingOf(ask(house({ run: { size: '4' }, table }), 'VR1', 'longestAllowed'))).toEqual(['B1.ventTable'])
  })

  it('is not known while a row has no size, or the run has none', () => {
    const unsized = { ...row3, size: 'unknown' }
    expect(longest({ run: { size: '4' }, table: { complete: '2', list: [row2, unsized] } })).toEqual(['unknown'])
    expect(longest({ run: { size: 'unknown' } })).toEqual(['unknown'])
    expect(missingOf(ask(house({ run: { appliance: 'unknown' } }), 'VR1', 'longestAllowed'))).toEqual(['VR1.appliance'])
  })
})
