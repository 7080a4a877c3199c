import { describe, expect, it } from 'vitest'
import { edited, ids, item, refusals } from './editing.js'
import { house } from './sample.js'

describe('setting a value', () => {
  it.each([
    ['RV1.setPressure', '50 psi', 'components', 'RV1', { setPressure: '50 psi' }],
    [
      'RV1.capacity',
      { value: '300000 Btu/h', how: 'nameplate' },
      'components',
      'RV1',
      { capacity: { value: '300000 Btu/h', how: 'nameplate' } },
    ],
    [
      'RV1.discharge.endHeight',
      '4 in',
      'components',
      'RV1',
      { discharge: { size: '3/4', shared: 'no', endHeight: '4 in' } },
    ],
    ['ISO1.name', 'main shut-off', 'components', 'ISO1', { name: 'main shut-off' }],
    ['B1.reliefWay', 'blocked', 'components', 'B1', { reliefWay: 'blocked' }],
    ['B1.standing', 'assumed', 'components', 'B1', { standing: 'assumed' }],
    ['B1.x-tag', 'seen', 'components', 'B1', { 'x-tag': 'seen' }],
    ['L-relief.pipe.size', '1', 'lines', 'L-relief', { pipe: { size: '1' } }],
    [
      'L-relief.path',
      ['B1.relief', 'ISO2', 'RV1.inlet'],
      'lines',
      'L-relief',
      { path: ['B1.relief', 'ISO2', 'RV1.inlet'] },
    ],
    ['state hot water.open', ['ZV3'], 'states', 'hot water', { open: ['ZV3'] }],
    ['OB1.serves', 'unknown', 'removed', 'OB1', { serves: 'unknown' }],
  ])('%s', (address, to, section, id, expected) => {
    const before = section === 'lines' && address.endsWith('path') ? [{ forget: 'L-tank' }] : []
    expect(item(edited(...before, { set: address, to }), section, id)).toMatchObject(expected)
  })

  it.each([
    ['phase', 'rough', { phase: 'rough' }],
    ['site.outdoorDesign', '5 degF', { site: { altitude: '310 ft', snowLine: '18 in', outdoorDesign: '5 degF' } }],
    ['water.staticPressure', '60 psi', { water: { staticPressure: '60 psi' } }],
    ['jurisdiction.codes.irc', '2021', { jurisdiction: { codes: { irc: '2021', nec: '2020' } } }],
    ['jurisdiction.authorities', [], { jurisdiction: { authorities: [] } }],
    ['complete.fixture', '0', { complete: { fixture: '0', all: '17' } }],
    ['kept.others', 'kept', { kept: { list: ['EX1', 'ISO1', 'L-tank'], others: 'kept' } }],
    ['complete.airVent', '1', { none: ['waterHeater'], complete: { airVent: '1' } }],
    ['x-note', 'none', { 'x-note': 'none' }],
  ])('%s', (address, to, expected) => {
    expect(edited({ set: address, to })).toMatchObject(expected)
  })

  it('replaces all that was said of the value', () => {
    expect(item(edited({ set: 'B1.mawp', to: '30 psi' }), 'components', 'B1')).toMatchObject({ mawp: '30 psi' })
  })

  it('reaches a part and the number of parts', () => {
    const document = edited({ set: 'VT1/window-east.distance', to: '4 ft' }, { set: 'VT1.openings.complete', to: '3' })
    expect(item(document, 'components', 'VT1')).toMatchObject({
      openings: { complete: '3', list: [{ id: 'window-east', distance: '4 ft' }, { id: 'door' }] },
    })
  })

  it('parts one thing from others that are written with it', () => {
    const document = edited({ set: 'ZV2.power', to: '10 VA' })
    expect(item(document, 'components', 'ZV2')).toEqual({ id: 'ZV2', kind: 'zoneValve', power: '10 VA' })
    expect(item(document, 'components', 'ZV3')).toEqual({ id: ['ZV1', 'ZV3'], kind: 'zoneValve', power: '7.68 VA' })
    expect(ids(document, 'components')).toHaveLength(ids(house, 'components').length)
  })

  it('says the work of a thing in one place only', () => {
    const document = edited({ set: 'EX1.work', to: 'new' })
    expect(item(document, 'components', 'EX1')).toMatchObject({ work: 'new' })
    expect(document['kept']).toEqual({ list: ['ISO1', 'L-tank'], others: 'new' })
  })

  it.each([
    ['RV2.setPressure', '50 psi', 'unknown-id', 'RV1'],
    ['RV1.setPresure', '50 psi', 'unknown-field', 'setPressure'],
    ['RV1.discharge.sise', '1', 'unknown-field', 'discharge.size'],
    ['VT1/window-west.distance', '4 ft', 'unknown-id', 'window-east'],
    ['VT1/door.distence', '4 ft', 'unknown-field', 'distance'],
    ['state hott.open', [], 'unknown-id', 'state hot'],
    ['site.snowline', '18 in', 'unknown-field', 'snowLine'],
    ['sites.snowLine', '18 in', 'unknown-id', 'site'],
    ['complete.zoneValves', '4', 'unknown-count', 'zoneValve'],
    ['kept.other', 'new', 'unknown-field', 'others'],
    ['none.airVent', 'no', 'not-settable', 'complete.airVent'],
    ['RV1.setPressure', null, 'empty-value', 'unknown'],
    ['RV1.setPressure', undefined, 'empty-value', 'unknown'],
  ])('%s is refused', (address, to, code, nearest) => {
    expect(refusals({ set: address, to })).toEqual([expect.objectContaining({ code, nearest, pointer: '/edits/0' })])
  })

  it.each(['installation', 'components', 'RV1', 'VT1/door', 'RV1.id', 'RV1.kind'])(
    '%s is not for setting',
    (address) => {
      expect(refusals({ set: address, to: 'RV9' })).toEqual([expect.objectContaining({ code: 'not-settable' })])
    },
  )

  it.each(['phase.now', 'RV1.path', 'state hot.name', 'constructor', '__proto__.polluted', 'B1.__proto__', 'B1/', ''])(
    '"%s" names nothing',
    (address) => {
      expect(refusals({ set: address, to: 'x' })).toHaveLength(1)
    },
  )
})
