import { describe, expect, it } from 'vitest'
import { ask, missingOf, wordOf, type Written } from './asking.js'

const cold = (id: string, path: string): Written => ({ id, medium: 'potableCold', path: path.split(' ') })

interface Cold {
  readonly meterCheck?: string
  readonly components?: readonly Written[]
  readonly lines: readonly Written[]
  readonly complete?: Written
}

/** A tank whose hot side goes into the open through a mixing valve, as in every house. */
const house = ({ meterCheck = 'no', components = [], lines, complete = { all: '50' } }: Cold): Written => ({
  complete,
  none: ['waterHeater'],
  water: { meterCheck },
  components: [
    { id: 'T1', kind: 'indirectTank', capped: ['relief'] },
    { id: 'WS1', kind: 'waterService' },
    { id: 'MV1', kind: 'mixingValve' },
    ...components,
  ],
  lines: [{ id: 'L-hot', medium: 'potableHot', path: ['T1.hot', 'MV1.hot'] }, ...lines],
})

const counted = { waterService: '1', potableExpansionTank: '1' }
const check = { id: 'PC1', kind: 'potableCheck' }
const stop = { id: 'PS1', kind: 'potableStop' }
const tees = [
  { id: 'PT1', kind: 'potableTee' },
  { id: 'PT2', kind: 'potableTee' },
]
const tank = { id: 'EXP1', kind: 'potableExpansionTank' }

const closed = (document: Written): string => wordOf(ask(document, 'T1', 'coldSideClosed'))
const expansion = (document: Written): string => wordOf(ask(document, 'T1', 'potableExpansion'))

describe('whether the cold side of a tank is closed', () => {
  const open = (meterCheck: string): Written =>
    house({
      meterCheck,
      components: [stop, tees[0] ?? {}],
      lines: [cold('L1', 'WS1.out PS1 PT1 T1.cold'), cold('L2', 'PT1.branch MV1.cold')],
    })

  it('no: nothing on the way to the street checks, and a stop stands open', () => {
    expect(closed(open('no'))).toBe('no')
    expect(ask(open('no'), 'T1', 'coldSideClosed').witness).toEqual(['T1.cold', 'PT1', 'PS1', 'WS1.out'])
  })

  it('yes: a check at the meter, whatever is drawn', () => {
    expect(closed(open('yes'))).toBe('yes')
    expect(closed({ water: { meterCheck: 'yes' }, components: [{ id: 'T1', kind: 'indirectTank' }] })).toBe('yes')
  })

  it('nobody looked at the meter: an open way is no no', () => {
    expect(closed(open('unknown'))).toBe('unknown')
    expect(missingOf(ask(open('unknown'), 'T1', 'coldSideClosed'))).toEqual(['water.meterCheck', 'T1.coldSideClosed'])
  })

  it('yes: a check on the way, and the way round through the mixing valve is none', () => {
    const checked = house({
      meterCheck: 'unknown',
      components: [check, tees[0] ?? {}],
      lines: [cold('L1', 'WS1.out PT1 PC1 T1.cold'), cold('L2', 'PT1.branch MV1.cold')],
    })
    expect(closed(checked)).toBe('yes')
    expect(ask(checked, 'T1', 'coldSideClosed').witness).toEqual(['T1.cold', 'PC1', 'PT1', 'WS1.out'])
  })

  it('no: one of two ways has no check', () => {
    const round = house({
      components: [check, ...tees],
      lines: [cold('L1', 'WS1.out PT1 PC1 PT2 T1.cold'), cold('L2', 'PT1.branch PT2.branch')],
    })
    expect(closed(round)).toBe('no')
  })

  it('unknown: the cold pipe is not drawn, or leads into the unknown, or the street is not listed', () => {
    expect(closed(house({ lines: [] }))).toBe('unknown')
    expect(closed(house({ components: [stop], lines: [cold('L1', 'unknown PS1 T1.cold')] }))).toBe('unknown')
    const nowhere = {
      complete: { all: '1' },
      water: { meterCheck: 'no' },
      components: [{ id: 'T1', kind: 'indirectTank', capped: ['cold'] }],
    }
    expect(closed(nowhere)).toBe('unknown')
    expect(missingOf(ask(nowhere, 'T1', 'coldSideClosed'))).toEqual(['waterService.count', 'T1.coldSideClosed'])
  })

  it('nothing is said of the water at all', () => {
    expect(missingOf(ask({ components: [{ id: 'T1', kind: 'indirectTank' }] }, 'T1', 'coldSideClosed'))).toEqual([
      'water.meterCheck',
      'waterService.count',
      'T1.coldSideClosed',
    ])
  })
})

describe('room for heated drinking water', () => {
  const between = (middle: Written): Written =>
    house({
      components: [...tees, tank, middle],
      complete: counted,
      lines: [cold('L1', 'WS1.out PT1 T1.cold'), cold('L2', `PT1.branch ${String(middle.id)} EXP1.system`)],
    })

  it('reachable, with the way that leads there', () => {
    const joined = house({
      components: [check, ...tees, tank],
      lines: [cold('L1', 'WS1.out PC1 PT1 T1.cold'), cold('L2', 'PT1.branch EXP1.system')],
    })
    expect(expansion(joined)).toBe('reachable')
    expect(ask(joined, 'T1', 'potableExpansion').witness).toEqual(['T1.cold', 'PT1', 'EXP1.system'])
  })

  it('behind a stop it can be shut off', () => {
    expect(expansion(between(stop))).toBe('closable')
  })

  it('behind a check it takes nothing up', () => {
    expect(expansion(between(check))).toBe('absent')
    const streetSide = house({
      components: [check, ...tees, tank],
      complete: counted,
      lines: [cold('L1', 'WS1.out PT1 PC1 T1.cold'), cold('L2', 'PT1.branch EXP1.system')],
    })
    expect(expansion(streetSide)).toBe('absent')
  })

  it('one listed is not all: another may hang on the hot side, which is never drawn to its end', () => {
    const uncounted = house({
      components: [check, tees[0] ?? {}, tank],
      complete: { waterService: '1' },
      lines: [
        cold('L1', 'WS1.out PT1 PC1 T1.cold'),
        cold('L2', 'PT1.branch EXP1.system'),
        { id: 'L-tap', medium: 'potableHot', path: ['MV1.mixed', 'unknown'] },
      ],
    })
    expect(expansion(uncounted)).toBe('absent')
    const openHot = house({ components: [], complete: { waterService: '1' }, lines: [] })
    expect(expansion(openHot)).toBe('unknown')
  })

  it('absent only where somebody counted', () => {
    const bare = (none: readonly string[]): Written => ({ none, components: [{ id: 'T1', kind: 'indirectTank' }] })
    expect(expansion(bare([]))).toBe('unknown')
    expect(expansion(bare(['potableExpansionTank']))).toBe('absent')
  })

  it('can be stated instead of drawn', () => {
    const stated = {
      components: [{ id: 'T1', kind: 'indirectTank', potableExpansion: 'reachable', coldSideClosed: 'no' }],
    }
    expect([expansion(stated), closed(stated)]).toEqual(['reachable', 'no'])
  })
})
