import { describe, expect, it } from 'vitest'
import { applyEdits, isMap, type Edit } from '../../src/model/index.js'
import type { PlainMap } from '../../src/model/editing/index.js'
import { openFile } from '../houses/open-house.js'
import { ask, boundsOf, missingOf, model, wordOf, type Written } from './asking.js'

const read = openFile('seeds/fragments/heating-loop.yaml')
if (!isMap(read)) throw new Error('the fragment is no map')
const loop = read

function edited(...edits: readonly Edit[]): PlainMap {
  const done = applyEdits(loop, edits, model)
  if (!done.ok) throw new Error(done.problems.map(({ message }) => message).join(' '))
  return done.document
}

const told = (id: string, fact: string, ...edits: readonly Edit[]): string => wordOf(ask(edited(...edits), id, fact))
const insert = (kind: string, line: string, after: string, more: Readonly<Record<string, unknown>> = {}): Edit => ({
  insert: { id: 'NEW', kind, ...more },
  in: line,
  after,
})
const pump = (line: string, after: string, serves = 'system'): Edit =>
  insert('circulator', line, after, { serves, checkBuiltIn: 'yes' })
const valve = (line: string, after: string, locked = 'no'): Edit => insert('isolationValve', line, after, { locked })

describe('the order of pump and expansion tank', () => {
  it('away behind the tank, with the way that was walked', () => {
    expect(told('EX1', 'pumpOrder')).toBe('away')
    expect(ask(loop, 'EX1', 'pumpOrder').witness).toEqual(['AS1.out', 'C1.in'])
  })

  it('towards from anywhere between the emitters and the tank, through the boiler too', () => {
    expect(told('EX1', 'pumpOrder', { remove: 'C1' }, pump('L-supply', 'TE3'))).toBe('towards')
    expect(told('EX1', 'pumpOrder', { remove: 'C1' }, pump('L-return', 'DS1'))).toBe('towards')
    expect(ask(edited(pump('L-supply', 'ISO1')), 'EX1', 'pumpOrder').witness).toEqual(['NEW.out', 'AS1.in'])
  })

  it('a pump of the boiler alone is passed by; one of unknown use leaves a question', () => {
    expect(told('EX1', 'pumpOrder', pump('L-supply', 'TE3', 'boiler'))).toBe('away')
    const unknown = edited(pump('L-supply', 'TE3', 'unknown'))
    expect(missingOf(ask(unknown, 'EX1', 'pumpOrder'))).toContain('NEW.serves')
  })

  it('neither where no pump is drawn', () => {
    expect(told('EX1', 'pumpOrder', { remove: 'C1' })).toBe('neither')
  })

  it('cannot be told where a piece of the circuit is not drawn, and can be stated', () => {
    expect(told('EX1', 'pumpOrder', { forget: 'L-supply' })).toBe('unknown')
    expect(told('EX1', 'pumpOrder', { forget: 'L-supply' }, { set: 'EX1.pumpOrder', to: 'away' })).toBe('away')
  })
})

describe('the way to the expansion tank', () => {
  it('counts what stands between the pipe with flow and the tank, and nothing else', () => {
    expect(told('EX1', 'tankWay')).toBe('open')
    expect(told('EX1', 'tankWay', valve('L-tank', 'AS1.tank'))).toBe('closable')
    expect(told('EX1', 'tankWay', valve('L-tank', 'TE2', 'open'))).toBe('open')
    expect(told('EX1', 'tankWay', valve('L-tank', 'TE2', 'unknown'))).toBe('unknown')
    expect(told('EX1', 'tankWay', valve('L-supply', 'AS1'))).toBe('open')
  })

  it('is absent for a tank whose port is plugged', () => {
    expect(told('EX1', 'tankWay', { remove: 'L-tank' }, { set: 'EX1.capped', to: ['system'] })).toBe('absent')
  })
})

describe('two tanks, and the fill', () => {
  const second = (line: string, after: string): readonly Edit[] => [
    insert('tee', line, after),
    { insert: { id: 'EX2', kind: 'expansionTank' } },
    { insert: { id: 'L-ex2', medium: 'heatingWater', path: ['NEW.branch', 'EX2.system'] } },
  ]

  it('two on one leg join at one place, two with the pump between do not', () => {
    expect(told('EX1', 'soleConnection')).toBe('yes')
    expect(told('EX1', 'soleConnection', ...second('L-tank', 'TE2'))).toBe('yes')
    expect(told('EX2', 'soleConnection', ...second('L-supply', 'C1'))).toBe('no')
    expect(told('EX1', 'soleConnection', { set: 'complete', to: {} })).toBe('unknown')
  })

  it('the fill joins at the tank unless more than fittings lies between', () => {
    expect(told('FV1', 'joinsAtTank')).toBe('yes')
    expect(told('FV1', 'joinsAtTank', pump('L-tank', 'TE2'))).toBe('no')
    expect(told('FV1', 'joinsAtTank', { forget: 'L-fill' })).toBe('unknown')
  })
})

describe('gauge and low-water cutoff', () => {
  it('stay with the boiler before the first valve, not behind it', () => {
    expect([told('B1', 'gaugeInVolume'), told('LW1', 'cutoffInVolume')]).toEqual(['yes', 'yes'])
    const behind = valve('L-cutoff', 'TE3.branch')
    expect(told('LW1', 'cutoffInVolume', behind)).toBe('no')
    expect(told('B1', 'gaugeInVolume', valve('L-gauge', 'TE1.branch'), { set: 'B1.gaugeBuiltIn', to: 'no' })).toBe('no')
  })

  it('a gauge built in decides, and one that nobody looked for leaves a question', () => {
    const behind = valve('L-gauge', 'TE1.branch')
    expect(told('B1', 'gaugeInVolume', behind, { set: 'B1.gaugeBuiltIn', to: 'yes' })).toBe('yes')
    expect(missingOf(ask(edited(behind), 'B1', 'gaugeInVolume'))).toContain('B1.gaugeBuiltIn')
  })
})

describe('air and dirt', () => {
  it('an air separator takes water from the boiler, or cooled down from the emitters', () => {
    expect(told('AS1', 'separatorWater')).toBe('boiler')
    expect(told('NEW', 'separatorWater', insert('airSeparator', 'L-return', 'DS1', { capped: ['tank', 'vent'] }))).toBe(
      'emitters',
    )
    expect(told('AS1', 'separatorWater', { forget: 'B1' })).toBe('unknown')
  })

  it('vents count that open by themselves', () => {
    expect(told('EX1', 'automaticVents')).toBe('yes')
    expect(told('EX1', 'automaticVents', { set: 'AV1.type', to: 'manual' })).toBe('no')
    expect(missingOf(ask(edited({ forget: 'AV1.type' }), 'EX1', 'automaticVents'))).toContain('AV1.type')
  })

  it('dirt of kept iron is held back on the common return, not on that of one zone', () => {
    expect(told('B1', 'dirtSeparated')).toBe('yes')
    const onOne = insert('dirtSeparator', 'L-one', 'E1')
    expect(told('B1', 'dirtSeparated', { remove: 'DS1' }, onOne)).toBe('no')
    expect(told('B1', 'dirtSeparated', { remove: 'DS1' }, onOne, { set: 'E2.work', to: 'new' })).toBe('yes')
    expect(told('B1', 'dirtSeparated', { remove: 'DS1' }, { forget: 'E2.work' }, onOne)).toBe('unknown')
  })
})

describe('water that runs through emitters', () => {
  it('in a state that opens their valve, and in no other', () => {
    const heating = (...open: readonly string[]): readonly Edit[] => [
      { insert: { name: 'trial', purpose: 'hot-water', open }, section: 'states' },
    ]
    const during = (...edits: readonly Edit[]): string => told('state trial', 'heatsZones', ...edits)
    expect(during(...heating('ZV1'))).toBe('yes')
    expect(during(...heating())).toBe('no')
    expect(during(...heating('unknown'))).toBe('unknown')
    expect(during(...heating(), { remove: 'ZV2' })).toBe('yes')
  })

  it('at rest only where neither pump nor zone valve stops it', () => {
    const plain: Edit = { set: 'C1.checkBuiltIn', to: 'no' }
    const shut = ['ZV1', 'ZV2'].map((id): Edit => ({ set: `${id}.normally`, to: 'closed' }))
    expect(told('B1', 'flowsAtRest')).toBe('no')
    expect(told('B1', 'flowsAtRest', plain, ...shut)).toBe('no')
    expect(told('B1', 'flowsAtRest', plain, ...shut, { set: 'ZV2.normally', to: 'open' })).toBe('yes')
    expect(missingOf(ask(edited(plain), 'B1', 'flowsAtRest'))).toContain('ZV1.normally')
  })

  it('a way round the pump stays open past a bypass valve, not past zone valves', () => {
    expect(told('C1', 'wayRound')).toBe('no')
    expect(told('C1', 'wayRound', { remove: 'ZV1' })).toBe('yes')
    expect(told('C1', 'wayRound', { forget: 'ZV1' })).toBe('unknown')
    const bypass: readonly Edit[] = [
      { remove: 'ZV1' },
      insert('bypassValve', 'L-one', 'HS.branch1', { setHead: '8 ft' }),
    ]
    expect(told('C1', 'wayRound', ...bypass)).toBe('yes')
  })
})

describe('oxygen and tees', () => {
  it('counts heating pipe without barrier that shares its water with iron', () => {
    const bare: Edit = { set: 'L-two.pipe.type', to: 'pex' }
    expect(told('L-two', 'oxygenReachesIron')).toBe('no')
    expect(told('L-two', 'oxygenReachesIron', bare)).toBe('yes')
    expect(told('L-cold', 'oxygenReachesIron', { set: 'L-cold.pipe.type', to: 'pex' })).toBe('no')
    expect(missingOf(ask(loop, 'L-tank', 'oxygenReachesIron'))).toContain('L-tank.pipe.type')
    expect(told('L-tank', 'oxygenReachesIron', { set: 'L-tank.pipe.length', to: '0 ft' })).toBe('no')
  })

  it('four sizes of the run are the widest spacing', () => {
    const tees = { components: [{ id: 'CT1', kind: 'closelySpacedTees', size: '1-1/4' }] }
    expect(boundsOf(ask(tees, 'CT1', 'widestSpacing'), 'length')).toEqual(['0.42 ft'])
  })

  it('the lowest relief setting of the boilers stands for the gauge', () => {
    expect(boundsOf(ask(loop, 'PG1', 'reliefAtGauge'), 'pressure')).toEqual(['30 psi'])
    expect(boundsOf(ask(edited({ forget: 'RV1.setPressure' }), 'PG1', 'reliefAtGauge'), 'pressure')).toEqual([
      'unknown',
    ])
  })
})

describe('freezing', () => {
  const house = (fluid: Written, place: Written, lowest = '15 F'): Written => ({
    complete: { all: '2' },
    heatingFluid: fluid,
    spaces: [{ id: 'shop', lowestTemperature: lowest }],
    lines: [{ id: 'L1', medium: 'heatingWater', path: ['unknown', 'unknown'], spaces: ['shop'], ...place }],
  })
  const freezes = (...house1: Parameters<typeof house>): string =>
    wordOf(ask(house(...house1), 'heatingFluid', 'canFreeze'))
  const bare = { exposure: 'unheated', freezeProtected: 'no' }
  const water = { antifreeze: 'no-antifreeze' }
  const glycol = { antifreeze: 'propylene-glycol', concentration: '35 %' }

  it('is judged by the coldest place that holds the fluid', () => {
    expect([freezes(water, bare), freezes(water, bare, '40 F')]).toEqual(['yes', 'no'])
    expect([freezes(glycol, bare), freezes(glycol, bare, '-10 F')]).toEqual(['no', 'yes'])
  })

  it('not in heated space, nor where the line is protected', () => {
    expect(freezes(water, { exposure: 'heated' })).toBe('no')
    expect(freezes(water, { ...bare, freezeProtected: 'yes' })).toBe('no')
  })

  it('stays open where place, strength or temperature is not known', () => {
    expect(freezes(water, {})).toBe('unknown')
    expect(freezes({ antifreeze: 'propylene-glycol' }, bare)).toBe('unknown')
    expect(freezes(water, bare, 'unknown')).toBe('unknown')
    expect(freezes(water, { exposure: 'outdoors', freezeProtected: 'no' })).toBe('unknown')
  })
})
