import { describe, expect, it } from 'vitest'
import { edited, ids, item, list, refusals } from './editing.js'
import { house } from './sample.js'

describe('forgetting a thing', () => {
  it('leaves unknown in paths, ends included, and in references', () => {
    const document = edited({ forget: 'B1' })
    expect(ids(document, 'components')).not.toContain('B1')
    expect(item(document, 'lines', 'L-relief')).toMatchObject({ path: ['unknown', 'RV1.inlet'] })
    expect(item(document, 'lines', 'L-main')).toMatchObject({ path: ['unknown', 'ISO1', 'C1', 'ZV1', 'unknown'] })
    expect(item(document, 'components', 'RV1')).toMatchObject({ protects: 'unknown' })
    expect(document['complete']).toEqual(house['complete'])
  })

  it('leaves unknown once in a list and keeps what else is said of it', () => {
    const document = edited({ forget: 'ZV2' }, { forget: 'ZV3' })
    expect(item(document, 'components', 'TX1')).toMatchObject({ feeds: { value: ['ZV1', 'unknown'], how: 'drawing' } })
    expect(item(document, 'states', 'hot water')).toEqual({
      name: 'hot water',
      open: ['ISO1', 'unknown'],
      energized: ['unknown'],
    })
    expect(item(document, 'components', 'ZV1')).toEqual({ id: ['ZV1'], kind: 'zoneValve', power: '7.68 VA' })
  })

  it('takes it off the list of kept things and keeps the others', () => {
    expect(edited({ forget: 'EX1' })['kept']).toEqual({ list: ['ISO1', 'L-tank'], others: 'new' })
  })

  it('takes a line away and nothing else', () => {
    const document = edited({ forget: 'L-main' })
    expect(ids(document, 'lines')).toEqual(['L-relief', 'L-tank', 'L-out'])
    expect(document['components']).toBe(house['components'])
    expect(document['complete']).toBe(house['complete'])
  })

  it('takes a part off its list and keeps the number', () => {
    expect(item(edited({ forget: 'VT1/door' }), 'components', 'VT1')).toMatchObject({
      openings: { complete: '2', list: [{ id: 'window-east' }] },
    })
  })

  it('leaves unknown where a space was named', () => {
    const document = edited({ forget: 'S1' })
    expect([item(document, 'components', 'ISO1'), item(document, 'components', 'ISO2')]).toMatchObject([
      { space: 'unknown' },
      { space: 'unknown' },
    ])
  })

  it('takes evidence off every list but that of an approval', () => {
    const document = edited({ forget: 'P1' }, { forget: 'P2' })
    expect(item(document, 'components', 'B1')).toMatchObject({ mawp: { value: '50 psi', how: 'nameplate' } })
    expect(item(document, 'components', 'B1')).not.toHaveProperty('mawp.evidence')
    expect(item(document, 'components', 'RV1')).not.toHaveProperty('evidence')
    expect(document['approved']).toBe(house['approved'])
    expect(document['x-note']).toBe(house['x-note'])
  })

  it('takes a state by its name', () => {
    const document = edited({ forget: 'state hot' })
    expect(ids(document, 'states')).toEqual(['hot water'])
    expect(document['complete']).toEqual(house['complete'])
  })
})

describe('forgetting a value', () => {
  it.each([
    ['RV1.setPressure', 'components', 'RV1', 'setPressure'],
    ['B1.mawp', 'components', 'B1', 'mawp'],
    ['B1.reliefWay', 'components', 'B1', 'reliefWay'],
    ['RV1.discharge', 'components', 'RV1', 'discharge'],
    ['RV1.discharge.size', 'components', 'RV1', 'discharge.size'],
    ['L-out.pipe.size', 'lines', 'L-out', 'pipe'],
    ['RV1.evidence', 'components', 'RV1', 'evidence'],
    ['VT1.openings', 'components', 'VT1', 'openings'],
    ['state hot.open', 'states', 'hot', 'open'],
    ['TX1.feeds', 'components', 'TX1', 'feeds'],
    ['OB1.serves', 'removed', 'OB1', 'serves'],
  ])('%s', (address, section, id, gone) => {
    expect(item(house, section, id)).toHaveProperty(gone)
    expect(item(edited({ forget: address }), section, id)).not.toHaveProperty(gone)
  })

  it('leaves the other members of a group', () => {
    expect(item(edited({ forget: 'RV1.discharge.size' }), 'components', 'RV1')).toMatchObject({
      discharge: { shared: 'no' },
    })
  })

  it('leaves the list where the number of parts is forgotten', () => {
    expect(item(edited({ forget: 'VT1.openings.complete' }), 'components', 'VT1')).toMatchObject({
      openings: [{ id: 'window-east' }, { id: 'door' }],
    })
  })

  it('writes unknown work, lest the list of kept things answer for it', () => {
    const document = edited({ forget: 'EX1.work' }, { forget: 'ISO2.work' })
    expect([item(document, 'components', 'EX1'), item(document, 'components', 'ISO2')]).toMatchObject([
      { work: 'unknown' },
      { work: 'unknown' },
    ])
    expect(document['kept']).toEqual({ list: ['ISO1', 'L-tank'], others: 'new' })
  })

  it('leaves work out where no list could answer', () => {
    expect(item(edited({ forget: 'kept' }, { forget: 'ISO2.work' }), 'components', 'ISO2')).not.toHaveProperty('work')
  })

  it('is content where nothing was said', () => {
    expect(edited({ forget: 'EX1.prechargeWaterSideEmpty' })).toEqual(house)
  })
})

describe('forgetting sections and counts', () => {
  it.each(['site', 'kept', 'complete', 'none', 'readings', 'removed', 'phase', 'approved', 'jurisdiction', 'x-note'])(
    '%s goes',
    (key) => {
      expect(edited({ forget: key })).not.toHaveProperty(key)
    },
  )

  it('forgets all things of a section with it', () => {
    const document = edited({ forget: 'spaces' })
    expect(document).not.toHaveProperty('spaces')
    expect(item(document, 'components', 'ISO1')).toMatchObject({ space: 'unknown' })
  })

  it('leaves lines of unknowns where all components are forgotten', () => {
    const document = edited({ forget: 'components' })
    expect(
      new Set(
        list(document['lines']).flatMap((line) =>
          Object.entries(line ?? {}).flatMap(([key, value]) => (key === 'path' ? value : [])),
        ),
      ),
    ).toEqual(new Set(['unknown']))
  })

  it.each([
    [
      'complete.boiler',
      'complete',
      { all: '17', zoneValve: '3', closable: '2', line: '4', pressurePart: 7, opening: '2', states: '2' },
    ],
    ['none.airVent', 'none', ['waterHeater']],
    ['complete.airVent', 'none', ['waterHeater']],
    ['kept.others', 'kept', { list: ['EX1', 'ISO1', 'L-tank'] }],
    ['kept.list', 'kept', { others: 'new' }],
  ])('%s', (address, key, expected) => {
    expect(edited({ forget: address })[key]).toEqual(expected)
  })

  it('drops a key with the last that stood under it', () => {
    expect(edited({ forget: 'none.airVent' }, { forget: 'none.waterHeater' })).not.toHaveProperty('none')
    expect(edited({ forget: 'site.altitude' }, { forget: 'site.snowLine' })).not.toHaveProperty('site')
  })
})

describe('what cannot be forgotten', () => {
  it.each(['installation', 'B1.id', 'B1.kind', 'B1.standing', 'L-main.path', 'L-main.medium'])('%s', (address) => {
    expect(refusals({ forget: address })).toEqual([expect.objectContaining({ code: 'not-forgettable' })])
  })

  it.each([
    ['ZV4', 'unknown-id', 'ZV1'],
    ['EX1.volumes', 'unknown-field', 'volume'],
    ['none.airVents', 'unknown-count', 'airVent'],
    ['reading', 'unknown-id', 'readings'],
  ])('%s is not there', (address, code, nearest) => {
    expect(refusals({ forget: address })).toEqual([expect.objectContaining({ code, nearest })])
  })
})
