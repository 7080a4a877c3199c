import { describe, expect, it } from 'vitest'
import { applyEdits } from '../../../src/model/editing/index.js'
import { edited, ids, item, refusals } from './editing.js'
import { house, model } from './sample.js'

describe('removing a thing', () => {
  it('closes a line over a middle item and lowers the counts of kind, families and all', () => {
    const document = edited({ remove: 'ISO1' })
    expect(item(document, 'lines', 'L-main')).toMatchObject({ path: ['B1.supply', 'C1', 'ZV1', 'B1.return'] })
    expect(document['complete']).toEqual({ ...complete, all: '16', closable: '1', pressurePart: 6 })
    expect(document['kept']).toEqual({ list: ['EX1', 'L-tank'], others: 'new' })
    expect(item(document, 'states', 'hot water')).toMatchObject({ open: ['ZV2'] })
  })

  it('closes over an item that says its way', () => {
    expect(item(edited({ remove: 'ISO2' }), 'lines', 'L-tank')).toMatchObject({ path: ['unknown', 'EX1.system'] })
  })

  it('takes along the lines that end at it', () => {
    const document = edited({ remove: 'RV1' })
    expect(ids(document, 'lines')).toEqual(['L-main', 'L-tank'])
    expect(document['complete']).toEqual({ ...complete, all: '14', line: '2' })
  })

  it('takes a line along once that begins and ends at it, and makes what referred to it unknown', () => {
    const document = edited({ remove: 'B1' })
    expect(ids(document, 'lines')).toEqual(['L-tank', 'L-out'])
    expect(document['complete']).toEqual({ ...complete, all: '14', line: '2', boiler: '0' })
    expect(item(document, 'components', 'RV1')).not.toHaveProperty('protects')
  })

  it('takes its line off the list of kept things too', () => {
    expect(edited({ remove: 'EX1' })['kept']).toEqual({ list: ['ISO1'], others: 'new' })
  })

  it('drops it from lists, one of several alike', () => {
    const document = edited({ remove: 'ZV1' })
    expect(item(document, 'components', 'TX1')).toMatchObject({ feeds: { value: ['ZV2', 'ZV3'], how: 'drawing' } })
    expect(item(document, 'states', 'hot')).toEqual({ name: 'hot', open: [] })
    expect(item(document, 'components', 'ZV2')).toEqual({ id: ['ZV2', 'ZV3'], kind: 'zoneValve', power: '7.68 VA' })
    expect(document['complete']).toMatchObject({ zoneValve: '2', all: '16' })
  })

  it('lowers the number of parts with a part', () => {
    const document = edited({ remove: 'VT1/door' })
    expect(item(document, 'components', 'VT1')).toMatchObject({
      openings: { complete: '1', list: [{ id: 'window-east' }] },
    })
    expect(document['complete']).toEqual({ ...complete, opening: '1' })
  })

  it('takes the parts of a thing along', () => {
    expect(edited({ remove: 'VT1' })['complete']).toEqual({ ...complete, all: '16', opening: '0' })
  })

  it('lowers the count of states, not of all, with a state', () => {
    expect(edited({ remove: 'state hot' })['complete']).toEqual({ ...complete, states: '1' })
  })

  it.each(['P1', 'OB1'])('leaves all counts where %s goes', (id) => {
    expect(edited({ remove: id })['complete']).toBe(house['complete'])
  })

  it('lowers a count in its long form and never below zero', () => {
    const document = { ...house, complete: { boiler: { value: '1', by: 'owner' }, all: '0', line: 'many' } }
    const result = applyEdits(document, [{ remove: 'B1' }], model)
    expect(result).toMatchObject({
      ok: true,
      document: { complete: { boiler: { value: '0', by: 'owner' }, all: '0', line: 'many' } },
    })
  })

  it.each(['RV1.setPressure', 'site', 'components', 'complete.boiler', 'kept.others', 'none.airVent'])(
    '%s is no thing',
    (address) => {
      expect(refusals({ remove: address })).toEqual([expect.objectContaining({ code: 'not-removable' })])
    },
  )

  it('refuses what is not there, with the nearest that is', () => {
    expect(refusals({ remove: 'ISO3' })).toEqual([expect.objectContaining({ code: 'unknown-id', nearest: 'ISO1' })])
  })
})

const complete = {
  all: '17',
  boiler: '1',
  zoneValve: '3',
  closable: '2',
  line: '4',
  pressurePart: 7,
  opening: '2',
  states: '2',
}
