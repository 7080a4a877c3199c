import { describe, expect, it } from 'vitest'
import { ask, missingOf, wordOf, type Written } from './asking.js'

const drain = (id: string, path: string, type?: string): Written => ({
  id,
  medium: 'condensate',
  path: path.split(' '),
  ...(type === undefined ? {} : { pipe: { type } }),
})

const house = (lines: readonly Written[], material = 'cast-iron'): Written => ({
  complete: { all: '20' },
  components: [
    { id: 'B1', kind: 'boiler' },
    { id: 'TR1', kind: 'condensateTrap' },
    { id: 'NE1', kind: 'neutralizer' },
    { id: 'DR1', kind: 'drainReceptor', material },
  ],
  lines,
})

const told = (document: Written): readonly string[] =>
  ['condensateTreated', 'acidReachesMetalDrain', 'metalAheadOfNeutralizer'].map((fact) =>
    wordOf(ask(document, 'B1', fact)),
  )

describe('condensate', () => {
  it('through the neutralizer into iron, all in plastic', () => {
    const treated = house([drain('L1', 'B1.condensate TR1 NE1 DR1.in', 'pvc')])
    expect(told(treated)).toEqual(['yes', 'no', 'no'])
    expect(ask(treated, 'B1', 'condensateTreated').witness).toEqual(['B1.condensate', 'TR1', 'NE1.in'])
  })

  it('straight into iron', () => {
    const untreated = house([drain('L1', 'B1.condensate TR1 DR1.in', 'pvc')])
    expect(told(untreated)).toEqual(['no', 'yes', 'no'])
    expect(ask(untreated, 'B1', 'acidReachesMetalDrain').witness).toEqual(['B1.condensate', 'TR1', 'DR1.in'])
  })

  it('straight into plastic', () => {
    expect(told(house([drain('L1', 'B1.condensate TR1 DR1.in', 'pvc')], 'pvc'))).toEqual(['no', 'no', 'no'])
  })

  it('into a drain of which nobody knows the material: no guess at the worst case', () => {
    const unknown = house([drain('L1', 'B1.condensate TR1 DR1.in', 'pvc')], 'unknown')
    expect(told(unknown)).toEqual(['no', 'unknown', 'no'])
    expect(missingOf(ask(unknown, 'B1', 'acidReachesMetalDrain'))).toEqual(['DR1.material', 'B1.acidReachesMetalDrain'])
  })

  it('metal counts ahead of the neutralizer only', () => {
    const pipes = (ahead: string, behind: string): Written =>
      house([
        drain('L1', 'B1.condensate TR1.in', 'pvc'),
        drain('L2', 'TR1.out NE1.in', ahead),
        drain('L3', 'NE1.out DR1.in', behind),
      ])
    expect(told(pipes('galvanized-steel', 'pvc'))).toEqual(['yes', 'no', 'yes'])
    expect(ask(pipes('galvanized-steel', 'pvc'), 'B1', 'metalAheadOfNeutralizer').witness).toEqual([
      'L2 galvanized-steel',
    ])
    expect(told(pipes('pvc', 'galvanized-steel'))).toEqual(['yes', 'no', 'no'])
    expect(told(pipes('stainless', 'copper-L'))).toEqual(['yes', 'no', 'no'])
  })

  it('without a neutralizer all metal up to the drain counts', () => {
    expect(told(house([drain('L1', 'B1.condensate TR1 DR1.in', 'copper-M')]))).toEqual(['no', 'yes', 'yes'])
  })

  it('pipe of which nobody knows the material', () => {
    const house1 = house([drain('L1', 'B1.condensate TR1 NE1 DR1.in')])
    expect(told(house1)).toEqual(['yes', 'no', 'unknown'])
    expect(missingOf(ask(house1, 'B1', 'metalAheadOfNeutralizer'))).toEqual([
      'L1.pipe.type',
      'B1.metalAheadOfNeutralizer',
    ])
  })

  it('an open end before the neutralizer decides nothing; one behind it does no harm', () => {
    expect(told(house([drain('L1', 'B1.condensate TR1 unknown', 'pvc')]))).toEqual(['unknown', 'unknown', 'unknown'])
    expect(told(house([drain('L1', 'B1.condensate TR1 NE1 unknown', 'pvc')]))).toEqual(['yes', 'no', 'no'])
  })

  it('a listed neutralizer that is not drawn treats nothing', () => {
    expect(told(house([]))).toEqual(['unknown', 'unknown', 'unknown'])
  })

  it('condensate that is led nowhere is not treated, and harms no drain', () => {
    const capped = { components: [{ id: 'B1', kind: 'boiler', capped: ['condensate'] }] }
    expect(told(capped)).toEqual(['no', 'no', 'no'])
  })

  it('can be stated instead of drawn', () => {
    const stated = { components: [{ id: 'B1', kind: 'boiler', condensateTreated: 'yes' }] }
    expect(ask(stated, 'B1', 'condensateTreated')).toMatchObject({ word: 'yes', stated: true })
  })
})
