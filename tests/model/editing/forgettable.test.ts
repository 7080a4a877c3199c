import { describe, expect, it } from 'vitest'
import { forgettable } from '../../../src/model/editing/index.js'
import { house, model } from './sample.js'

const addresses = forgettable(house, model)

describe('what can be forgotten', () => {
  it.each([
    'components',
    'B1',
    'B1.mawp',
    'B1.capped',
    'B1.reliefWay',
    'RV1.discharge',
    'RV1.discharge.size',
    'RV1.evidence',
    'ISO2.work',
    'ZV1',
    'ZV3.power',
    'TX1.feeds',
    'VT1.openings',
    'VT1.openings.complete',
    'VT1/door',
    'VT1/window-east.distance',
    'L-main',
    'L-main.pipe.type',
    'spaces',
    'S1.use',
    'state hot',
    'state hot water.energized',
    'R1.value',
    'P1',
    'P1.type',
    'removed',
    'OB1.serves',
    'site',
    'site.snowLine',
    'heatingFluid.additives',
    'jurisdiction.codes.irc',
    'jurisdiction.applicationDate',
    'complete',
    'complete.all',
    'complete.states',
    'none',
    'none.airVent',
    'kept',
    'kept.list',
    'kept.others',
  ])('%s', (address) => {
    expect(addresses).toContain(address)
  })

  it.each([
    ['unknown already', 'EX1.precharge'],
    ['not said', 'EX1.prechargeWaterSideEmpty'],
    ['a decision', 'phase'],
    ['a decision', 'approved'],
    ['a decision', 'jurisdiction.authorities'],
    ['holds a decision', 'jurisdiction'],
    ['print only', 'name'],
    ['print only', 'units'],
    ['structure', 'installation'],
    ['structure', 'B1.kind'],
    ['structure', 'L-main.path'],
    ['structure', 'L-main.medium'],
    ['not judged', 'x-note'],
  ])('not what is %s: %s', (_, address) => {
    expect(addresses).not.toContain(address)
  })

  it('names each address once', () => {
    expect(new Set(addresses).size).toBe(addresses.length)
  })

  it('finds nothing in a list of unknowns', () => {
    const document = { components: [{ id: 'TX1', kind: 'transformer', feeds: ['unknown'] }] }
    expect(forgettable(document, model)).toEqual(['components', 'TX1'])
  })

  it('finds an empty list, which says that there is nothing', () => {
    const document = { heatingFluid: { additives: [] } }
    expect(forgettable(document, model)).toEqual(['heatingFluid', 'heatingFluid.additives'])
  })
})
