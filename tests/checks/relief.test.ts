import { describe, expect, it } from 'vitest'
import { printQuantity, si } from '../../src/units/index.js'
import { ask, boundsOf, factsOf, missingOf, wordOf, type Written } from './asking.js'
import { boilerHouse, changed, line } from './boiler-house.js'

const told = (document: Written): Readonly<Record<string, string>> => ({
  inVolume: wordOf(ask(document, 'B1', 'reliefInVolume')),
  way: wordOf(ask(document, 'B1', 'reliefWay')),
  onBoiler: wordOf(ask(document, 'B1', 'reliefOnBoiler')),
})

const behind = (middle: Written): Written =>
  changed(boilerHouse, {
    complete: { all: '10' },
    components: [middle],
    lines: [line('L-relief', `B1.relief ${String(middle.id)} RV1.inlet`)],
  })

describe('the way to the relief valve', () => {
  it('in the tapping: joined, free, on the boiler', () => {
    expect(told(boilerHouse)).toEqual({ inVolume: 'yes', way: 'open', onBoiler: 'yes' })
    expect(ask(boilerHouse, 'B1', 'reliefWay').witness).toEqual(['B1.relief', 'RV1.inlet'])
  })

  it('behind a valve that shuts all three demands fail', () => {
    const house = behind({ id: 'ISO2', kind: 'isolationValve', locked: 'no' })
    expect(told(house)).toEqual({ inVolume: 'no', way: 'blocked', onBoiler: 'no' })
    expect(ask(house, 'B1', 'reliefWay').witness).toEqual(['B1.relief', 'ISO2', 'RV1.inlet'])
  })

  it('a valve locked open leaves the volume whole, and does not stand on the boiler', () => {
    expect(told(behind({ id: 'ISO2', kind: 'isolationValve', locked: 'open' }))).toEqual({
      inVolume: 'yes',
      way: 'open',
      onBoiler: 'no',
    })
  })

  it('a valve of which nobody looked whether it is locked decides nothing, and says so', () => {
    const answer = ask(behind({ id: 'ISO2', kind: 'isolationValve' }), 'B1', 'reliefInVolume')
    expect([wordOf(answer), ...missingOf(answer)]).toEqual(['unknown', 'ISO2.locked', 'B1.reliefInVolume'])
  })

  it('what checks, strains or reduces blocks the way without shutting the volume off', () => {
    const inTheWay = [
      { id: 'CV1', kind: 'checkValve' },
      { id: 'DS1', kind: 'dirtSeparator' },
      { id: 'C1', kind: 'circulator', checkBuiltIn: 'yes' },
    ]
    for (const middle of inTheWay)
      expect(told(behind(middle))).toEqual({ inVolume: 'yes', way: 'blocked', onBoiler: 'no' })
  })

  it('a pump without check is no fitting', () => {
    const house = behind({ id: 'C1', kind: 'circulator', checkBuiltIn: 'no' })
    expect(told(house)).toEqual({ inVolume: 'yes', way: 'open', onBoiler: 'no' })
    expect(wordOf(ask(behind({ id: 'C1', kind: 'circulator' }), 'B1', 'reliefWay'))).toBe('unknown')
  })

  it('a tee is a fitting', () => {
    const tee = { id: 'TE2', kind: 'tee', capped: ['branch'] }
    expect(told(behind(tee))).toEqual({ inVolume: 'yes', way: 'open', onBoiler: 'yes' })
  })

  it('the long way round through the radiator does not count: the isolation valve there can be shut', () => {
    const house = changed(boilerHouse, {
      complete: { all: '12' },
      components: [
        { id: 'B1', kind: 'boiler', capped: ['relief', 'gas', 'flue', 'intake', 'condensate'] },
        { id: 'ISO2', kind: 'isolationValve', locked: 'no' },
        { id: 'TE2', kind: 'tee' },
      ],
      lines: [line('L-circuit', 'B1.supply ISO1 TE2 E1 TE1 ISO2 B1.return'), line('L-relief', 'TE2.branch RV1.inlet')],
    })
    expect(told(house)).toEqual({ inVolume: 'no', way: 'blocked', onBoiler: 'no' })
  })

  it('a relief valve of the drinking water does nothing for the boiler', () => {
    const house = changed(boilerHouse, {
      complete: { all: '10' },
      components: [
        { id: 'B1', kind: 'boiler', capped: ['gas', 'flue', 'intake', 'condensate'] },
        { id: 'BFP1', kind: 'backflowPreventer', capped: ['vent'] },
      ],
      lines: [
        line('L-relief', 'B1.relief BFP1.out'),
        { id: 'L-potable', medium: 'potableCold', path: ['BFP1.in', 'RV1.inlet'] },
      ],
    })
    expect(told(house)).toEqual({ inVolume: 'no', way: 'absent', onBoiler: 'no' })
  })

  it('no relief valve: known only where somebody counted', () => {
    const bare = {
      complete: { all: '1' },
      components: [
        { id: 'B1', kind: 'boiler', capped: ['supply', 'return', 'relief', 'gas', 'flue', 'intake', 'condensate'] },
      ],
    }
    expect(told(bare)).toEqual({ inVolume: 'no', way: 'absent', onBoiler: 'no' })
    const undrawn = { components: [{ id: 'B1', kind: 'boiler' }] }
    expect(told(undrawn)).toEqual({ inVolume: 'unknown', way: 'unknown', onBoiler: 'unknown' })
    expect(told({ ...undrawn, none: ['reliefValve'] })).toEqual({ inVolume: 'no', way: 'absent', onBoiler: 'no' })
  })

  it('a listed valve whose pipe is not drawn may be anywhere, however complete the counts', () => {
    const house = {
      complete: { all: '2' },
      components: [
        { id: 'B1', kind: 'boiler' },
        { id: 'RV1', kind: 'reliefValve', protects: 'B1' },
      ],
    }
    expect(told(house)).toEqual({ inVolume: 'unknown', way: 'unknown', onBoiler: 'unknown' })
  })

  it('an open end does not pass', () => {
    const house = changed(boilerHouse, {
      complete: { all: '9' },
      lines: [line('L-relief', 'B1.relief unknown RV1.inlet')],
    })
    expect(told(house)).toEqual({ inVolume: 'unknown', way: 'unknown', onBoiler: 'unknown' })
  })
})

describe('stated answers about the relief valve', () => {
  const stated = { components: [{ id: 'B1', kind: 'boiler', reliefWay: 'open' }] }

  it('stand in for a drawing', () => {
    expect(ask(stated, 'B1', 'reliefWay')).toMatchObject({ state: 'word', word: 'open', stated: true })
  })

  it('do not stand against one: the trace is used, and the two contradict', () => {
    const house = changed(behind({ id: 'ISO2', kind: 'isolationValve', locked: 'no' }), {
      components: [{ id: 'B1', kind: 'boiler', reliefWay: 'open', capped: ['gas', 'flue', 'intake', 'condensate'] }],
    })
    expect(ask(house, 'B1', 'reliefWay')).toMatchObject({ state: 'word', word: 'blocked', stated: false })
    expect(factsOf(house).contradictions).toMatchObject([
      { code: 'answer-against-trace', subject: 'B1', fact: 'reliefWay' },
    ])
  })
})

describe('lowest setting and capacity of the relief valves', () => {
  const second = (values: Written): Written =>
    changed(boilerHouse, {
      complete: { all: '10' },
      components: [{ id: 'RV2', kind: 'reliefValve', setPressure: '60 psi', capacity: '100000 Btu/h', ...values }],
    })
  const lowest = (document: Written): readonly string[] =>
    boundsOf(ask(document, 'B1', 'lowestReliefSetting'), 'pressure')
  const capacity = (document: Written): readonly string[] => boundsOf(ask(document, 'B1', 'reliefCapacity'), 'heatRate')

  it('one valve, all counted', () => {
    expect(lowest(boilerHouse)).toEqual(['30 psi'])
    expect(capacity(boilerHouse)).toEqual(['300000 Btu/h'])
    expect(ask(boilerHouse, 'B1', 'lowestReliefSetting').witness).toEqual(['RV1 30 psi'])
    expect(ask(boilerHouse, 'B1', 'reliefCapacity').witness).toEqual([
      `RV1 ${printQuantity(si('heatRate', '300000 Btu/h'), 'heatRate', 'ip')}`,
    ])
  })

  it('the lowest and the sum, not the first', () => {
    expect(lowest(second({ protects: 'B1', setPressure: '15 psi' }))).toEqual(['15 psi'])
    expect(capacity(second({ protects: 'B1' }))).toEqual(['400000 Btu/h'])
  })

  it('a valve of the tank does not count', () => {
    const tank = changed(second({ protects: 'T1', setPressure: '15 psi' }), {
      complete: { all: '11' },
      components: [{ id: 'T1', kind: 'indirectTank' }],
    })
    expect([lowest(tank), capacity(tank)]).toEqual([['30 psi'], ['300000 Btu/h']])
  })

  it('one listed is not all: another may open lower, and may carry more', () => {
    const uncounted = { ...boilerHouse, complete: {} }
    expect(lowest(uncounted)).toEqual(['no lower limit', '30 psi'])
    expect(capacity(uncounted)).toEqual(['300000 Btu/h', 'no upper limit'])
    expect(missingOf(ask(uncounted, 'B1', 'lowestReliefSetting'))).toEqual(['reliefValve.count'])
  })

  it('a valve that protects nobody knows what gives a bound, not the worst case', () => {
    expect(lowest(second({ setPressure: '15 psi' }))).toEqual(['15 psi', '30 psi'])
    expect(lowest(second({}))).toEqual(['30 psi'])
    expect(capacity(second({}))).toEqual(['300000 Btu/h', '400000 Btu/h'])
    expect(missingOf(ask(second({}), 'B1', 'reliefCapacity'))).toEqual(['RV2.protects'])
  })

  it('no valve at all: no setting, and no capacity', () => {
    const none = { complete: { all: '1' }, components: [{ id: 'B1', kind: 'boiler' }] }
    expect(lowest(none)).toEqual(['unknown'])
    expect(missingOf(ask(none, 'B1', 'lowestReliefSetting'))).toEqual(['reliefValve.count'])
    expect(capacity(none)).toEqual(['0 Btu/h'])
  })

  it('a tag that nobody read', () => {
    const unread = changed(boilerHouse, {
      components: [{ id: 'RV1', kind: 'reliefValve', protects: 'B1', capped: ['outlet'] }],
    })
    expect([lowest(unread), capacity(unread)]).toEqual([['unknown'], ['0 Btu/h', 'no upper limit']])
    expect(missingOf(ask(unread, 'B1', 'lowestReliefSetting'))).toEqual(['RV1.setPressure'])
    expect(ask(unread, 'B1', 'reliefCapacity').witness).toEqual(['RV1 unknown'])
  })
})

describe('the weakest part', () => {
  const weakest = (document: Written): readonly string[] => boundsOf(ask(document, 'B1', 'weakestPart'), 'pressure')

  it('is the lowest limit of all that the water reaches, behind valves too', () => {
    expect(weakest(boilerHouse)).toEqual(['60 psi'])
    expect(ask(boilerHouse, 'B1', 'weakestPart').witness).toEqual(['E1 60 psi'])
  })

  it('is at most the lowest known while a part has no figure', () => {
    const house = changed(boilerHouse, { components: [{ id: 'TE1', kind: 'tee' }] })
    expect(weakest(house)).toEqual(['no lower limit', '60 psi'])
    expect(missingOf(ask(house, 'B1', 'weakestPart'))).toEqual(['TE1.maximumPressure', 'B1.weakestPart'])
  })

  it('is at most the lowest known while an end is open', () => {
    const house = changed(boilerHouse, { lines: [line('L-tank', 'TE1.branch unknown')] })
    expect(weakest(house)).toEqual(['no lower limit', '60 psi'])
  })

  it('does not look beyond the backflow preventer', () => {
    const house = changed(boilerHouse, {
      complete: { all: '12' },
      components: [
        { id: 'BFP1', kind: 'backflowPreventer', capped: ['vent'] },
        { id: 'EXP2', kind: 'potableExpansionTank', maximumPressure: '20 psi' },
        { id: 'EX1', kind: 'expansionTank', maximumPressure: '100 psi', capped: ['system'] },
      ],
      lines: [
        line('L-tank', 'TE1.branch BFP1.out'),
        { id: 'L-potable', medium: 'potableCold', path: ['BFP1.in', 'EXP2.system'] },
      ],
    })
    expect(weakest(house)).toEqual(['60 psi'])
  })

  it('nothing is known of parts that are not drawn', () => {
    const house = {
      components: [
        { id: 'B1', kind: 'boiler' },
        { id: 'E1', kind: 'finTube', maximumPressure: '20 psi' },
      ],
    }
    expect(weakest(house)).toEqual(['unknown'])
  })

  it('a stated figure narrows a bound and must lie within it', () => {
    const stated = (value: string): Written =>
      changed(boilerHouse, {
        components: [
          {
            id: 'B1',
            kind: 'boiler',
            weakestPart: { value, within: '5 psi' },
            capped: ['gas', 'flue', 'intake', 'condensate'],
          },
          { id: 'TE1', kind: 'tee' },
        ],
      })
    expect(weakest(stated('50 psi'))).toEqual(['45 psi', '55 psi'])
    expect(factsOf(stated('80 psi')).contradictions).toMatchObject([{ subject: 'B1', fact: 'weakestPart' }])
  })
})
