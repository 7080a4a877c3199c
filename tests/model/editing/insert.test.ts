import { describe, expect, it } from 'vitest'
import { edited, ids, item, list, refusals } from './editing.js'

describe('inserting a thing', () => {
  it('adds a component and raises the counts that are stated', () => {
    const document = edited({ insert: { id: 'ISO3', kind: 'isolationValve' } })
    expect(ids(document, 'components')).toContain('ISO3')
    expect(document['complete']).toMatchObject({ all: '18', closable: '3', pressurePart: 8, boiler: '1' })
    expect(document['complete']).not.toHaveProperty('isolationValve')
  })

  it.each([
    [{ after: 'B1.relief' }, ['B1.relief', 'ISO3', 'RV1.inlet']],
    [{ before: 'RV1.inlet' }, ['B1.relief', 'ISO3', 'RV1.inlet']],
    [{ after: 'B1' }, ['B1.relief', 'ISO3', 'RV1.inlet']],
    [{ after: 'B1.relief', as: 'ISO3.b-a' }, ['B1.relief', 'ISO3.b-a', 'RV1.inlet']],
  ])('puts it into a line: %j', (beside, path) => {
    const document = edited({ insert: { id: 'ISO3', kind: 'isolationValve' }, in: 'L-relief', ...beside })
    expect(item(document, 'lines', 'L-relief')).toMatchObject({ path })
  })

  it('takes a kind out of "none" and counts it', () => {
    const document = edited({ insert: { id: ['AV1', 'AV2'], kind: 'airVent' } })
    expect(document).toMatchObject({ none: ['waterHeater'], complete: { airVent: '2', all: '19' } })
  })

  it('takes a family out of "none" when one of its kinds comes', () => {
    const document = edited({ set: 'none', to: ['emitter'] }, { insert: { id: 'FT1', kind: 'finTube' } })
    expect(document).not.toHaveProperty('none')
    expect(document['complete']).toMatchObject({ emitter: '1', pressurePart: 8 })
  })

  it('counts several that are written once', () => {
    expect(edited({ insert: { id: ['ZV4', 'ZV5'], kind: 'zoneValve' } })['complete']).toMatchObject({
      zoneValve: '5',
      all: '19',
    })
  })

  it('opens the section that is named, or that lines are at home in', () => {
    expect(edited({ insert: { id: 'Z1', designLoad: '9000 Btu/h' }, section: 'zones' })).toMatchObject({
      zones: [{ id: 'Z1' }],
      complete: { all: '18' },
    })
    const line = { id: 'L-gas', medium: 'gas', path: ['unknown', 'B1.gas'] }
    expect(edited({ insert: line })['complete']).toMatchObject({ line: '5', all: '18' })
  })

  it('counts states apart, and neither evidence nor what was taken out', () => {
    expect(edited({ insert: { name: 'away', open: [] }, section: 'states' })['complete']).toMatchObject({
      states: '3',
      all: '17',
    })
    expect(edited({ insert: { id: 'P3' }, section: 'evidence' })['complete']).toMatchObject({ all: '17' })
    expect(edited({ insert: { id: 'OB2', kind: 'boiler' }, section: 'removed' })['complete']).toMatchObject({
      boiler: '1',
      all: '17',
    })
  })

  it('adds a part to its owner and to the number of parts', () => {
    const document = edited({ insert: { id: 'window-west' }, section: 'VT1.openings' })
    expect(item(document, 'components', 'VT1')).toMatchObject({ openings: { complete: '3' } })
    expect(
      list(
        Object.entries(item(document, 'components', 'VT1') ?? {}).flatMap(([key, value]) =>
          key === 'openings' ? list(value.list) : [],
        ),
      ),
    ).toHaveLength(3)
    expect(document['complete']).toMatchObject({ opening: '3', all: '17' })
  })

  it('starts a list of parts', () => {
    expect(
      item(edited({ insert: { id: 'row-2', size: '2' }, section: 'B1.ventTable' }), 'components', 'B1'),
    ).toMatchObject({
      ventTable: [{ id: 'row-2' }],
    })
  })

  it.each([
    ['no map', 'RV2', {}, 'not-a-thing'],
    ['no id', { kind: 'airVent' }, {}, 'missing-id'],
    ['no section', { id: 'Z1' }, {}, 'missing-section'],
    ['no owner', { id: 'w', kind: 'opening' }, {}, 'missing-section'],
    ['a wrong section', { id: 'AV1', kind: 'airVent' }, { section: 'lines' }, 'wrong-section'],
    ['a value as section', { id: 'AV1' }, { section: 'B1.mawp' }, 'wrong-section'],
    ['an id that is taken', { id: 'L-main', kind: 'airVent' }, {}, 'duplicate-id'],
    ['the id of a sibling', { id: 'door' }, { section: 'VT1.openings' }, 'duplicate-id'],
    ['a name that is taken', { name: 'hot' }, { section: 'states' }, 'duplicate-id'],
    ['a part into a line', { id: 'w' }, { section: 'VT1.openings', in: 'L-main', after: 'ISO1' }, 'not-a-component'],
    ['a space into a line', { id: 'S2' }, { section: 'spaces', in: 'L-main', after: 'ISO1' }, 'not-a-component'],
    ['no neighbor', { id: 'ISO3', kind: 'isolationValve' }, { in: 'L-main' }, 'missing-neighbor'],
    [
      'two neighbors',
      { id: 'ISO3', kind: 'isolationValve' },
      { in: 'L-main', after: 'ISO1', before: 'C1' },
      'missing-neighbor',
    ],
    ['no line', { id: 'ISO3', kind: 'isolationValve' }, { after: 'ISO1' }, 'missing-line'],
    ['a place at the end', { id: 'ISO3', kind: 'isolationValve' }, { in: 'L-main', after: 'B1.return' }, 'end-of-line'],
    [
      'a place at the start',
      { id: 'ISO3', kind: 'isolationValve' },
      { in: 'L-main', before: 'B1.supply' },
      'end-of-line',
    ],
    ['no through-way', { id: 'EX2', kind: 'expansionTank' }, { in: 'L-main', after: 'ISO1' }, 'no-through-way'],
    [
      'several at once',
      { id: ['ISO3', 'ISO4'], kind: 'isolationValve' },
      { in: 'L-main', after: 'ISO1' },
      'not-a-thing',
    ],
    [
      'the way of another',
      { id: 'ISO3', kind: 'isolationValve' },
      { in: 'L-main', after: 'ISO1', as: 'ISO2.a-b' },
      'unknown-id',
    ],
    ['two items alike', { id: 'ISO3', kind: 'isolationValve' }, { in: 'L-main', after: 'B1' }, 'unknown-id'],
  ])('%s is refused', (_, thing, beside, code) => {
    expect(refusals({ insert: thing, ...beside })).toEqual([expect.objectContaining({ code })])
  })

  it.each([
    [{ id: 'B2', kind: 'boyler' }, {}, 'unknown-kind', 'boiler'],
    [{ id: 'ISO3', kind: 'isolationValve' }, { in: 'L-mian', after: 'ISO1' }, 'unknown-id', 'L-main'],
    [{ id: 'ISO3', kind: 'isolationValve' }, { in: 'L-main', after: 'ISO2' }, 'unknown-id', 'ISO1'],
    [{ id: 'S2' }, { section: 'space' }, 'unknown-id', 'spaces'],
  ])('%j %j is met with the nearest right name', (thing, beside, code, nearest) => {
    expect(refusals({ insert: thing, ...beside })).toEqual([expect.objectContaining({ code, nearest })])
  })
})
