import { describe, expect, it } from 'vitest'
import { ask, boundsOf, missingOf, wordOf, type Written } from './asking.js'

const line = (id: string, medium: 'potableCold' | 'potableHot', path: string): Written => ({
  id,
  medium,
  path: path.split(' '),
})
const thing = (id: string, kind: string, more: Written = {}): Written => ({ id, kind, ...more })
const house = (components: readonly Written[], lines: readonly Written[], more: Written = {}): Written => ({
  complete: { all: String(components.length + lines.length + 1) },
  components,
  lines,
  fixtures: [{ id: 'FX1', type: 'shower' }],
  ...more,
})

describe('where the T&P valve of a tank stands', () => {
  const valve = (type: string): Written => thing('RV1', 'reliefValve', { type, capped: ['outlet'] })
  const stop = thing('PS1', 'potableStop')
  const tee = thing('PT1', 'potableTee', { capped: ['branch'] })
  const place = (path: string, relief: Written, kind = 'indirectTank'): string => {
    const capped = kind === 'indirectTank' ? ['coilIn', 'coilOut', 'cold', 'hot'] : ['cold', 'hot']
    const loose = [stop, tee].filter(({ id }) => path.includes(String(id)))
    const document = house([thing('T1', kind, { capped }), relief, ...loose], [line('L1', 'potableHot', path)])
    return wordOf(ask(document, 'T1', 'temperatureRelief'))
  }
  const tp = valve('temperature-and-pressure')

  it('in its tapping, a fitting between at most', () => {
    expect(place('T1.relief RV1.inlet', tp)).toBe('in-tapping')
    expect(place('T1.relief PT1 RV1.inlet', tp)).toBe('in-tapping')
    expect(place('T1.relief RV1.inlet', tp, 'waterHeater')).toBe('in-tapping')
  })

  it('behind a stop it is blocked', () => {
    expect(place('T1.relief PS1 RV1.inlet', tp)).toBe('blocked')
  })

  it('farther off, but free', () => {
    const pump = thing('RP1', 'recirculationPump', { checkBuiltIn: 'no' })
    const document = house(
      [thing('T1', 'waterHeater', { capped: ['cold', 'hot'] }), tp, pump],
      [line('L1', 'potableHot', 'T1.relief RP1 RV1.inlet')],
    )
    expect(wordOf(ask(document, 'T1', 'temperatureRelief'))).toBe('free')
  })

  it('a pressure valve is none, and one whose tag nobody read may be one', () => {
    expect(place('T1.relief RV1.inlet', valve('pressure'))).toBe('absent')
    expect(place('T1.relief RV1.inlet', valve('unknown'))).toBe('unknown')
  })

  it('is unknown where nothing is drawn, and can be stated', () => {
    expect(wordOf(ask({ components: [thing('T1', 'indirectTank')] }, 'T1', 'temperatureRelief'))).toBe('unknown')
    const stated = { components: [thing('T1', 'indirectTank', { temperatureRelief: 'in-tapping' })] }
    expect(wordOf(ask(stated, 'T1', 'temperatureRelief'))).toBe('in-tapping')
  })
})

describe('whether hot water is mixed on the way to a fixture', () => {
  const heater = thing('WH1', 'waterHeater', { capped: ['relief', 'cold'] })
  const valve = thing('MV1', 'mixingValve', { capped: ['cold'] })
  const outlet = thing('FO1', 'fixtureOutlet', { fixture: 'FX1' })
  const mixed = [line('L1', 'potableHot', 'WH1.hot MV1 FO1.hot')]
  const told = (document: Written): string => wordOf(ask(document, 'FX1', 'tempered'))

  it('yes: its only outlet is behind the valve', () => {
    expect(told(house([heater, valve, outlet], mixed))).toBe('yes')
  })

  it('no: one outlet of two is not, with the way', () => {
    const second = thing('FO2', 'fixtureOutlet', { fixture: 'FX1' })
    const tee = thing('PT1', 'potableTee')
    const lines = [line('L1', 'potableHot', 'WH1.hot PT1 MV1 FO1.hot'), line('L2', 'potableHot', 'PT1.branch FO2.hot')]
    const document = house([heater, valve, outlet, second, tee], lines)
    expect(told(document)).toBe('no')
    expect(ask(document, 'FX1', 'tempered').witness).toEqual(['WH1.hot', 'PT1', 'FO2.hot'])
  })

  it('a return that runs back to the cold inlet of the heater is no way to the hot water', () => {
    const tee = thing('PT1', 'potableTee')
    const open = thing('WH1', 'waterHeater', { capped: ['relief'] })
    const lines = [line('L1', 'potableHot', 'WH1.hot MV1 PT1 FO1.hot'), line('L2', 'potableHot', 'PT1.branch WH1.cold')]
    expect(told(house([open, valve, outlet, tee], lines))).toBe('yes')
  })

  it('unknown while outlets are not counted, and where none is drawn', () => {
    const uncounted = { ...house([heater, valve, outlet], mixed), complete: { waterHeater: '1' } }
    expect(told(uncounted)).toBe('unknown')
    expect(missingOf(ask(uncounted, 'FX1', 'tempered'))).toContain('fixtureOutlet.count')
    expect(told(house([heater], []))).toBe('unknown')
  })

  it('is taken as stated where it is not drawn', () => {
    expect(told({ fixtures: [{ id: 'FX1', tempered: 'yes' }] })).toBe('yes')
  })
})

describe('where a mixing valve takes its cold water', () => {
  const tank = thing('WH1', 'waterHeater', { capped: ['relief', 'hot'] })
  const valve = thing('MV1', 'mixingValve', { capped: ['hot', 'mixed'] })
  const parts = [tank, valve, thing('WS1', 'waterService'), thing('PT1', 'potableTee')]
  const main = line('L1', 'potableCold', 'WS1.out PT1 WH1.cold')
  const told = (document: Written): string => wordOf(ask(document, 'MV1', 'coldSource'))

  it('from the line of the tank', () => {
    const document = house(parts, [main, line('L2', 'potableCold', 'PT1.branch MV1.cold')])
    expect(told(document)).toBe('tank-line')
    expect(ask(document, 'MV1', 'coldSource').witness).toEqual(['MV1.cold', 'PT1', 'WH1.cold'])
  })

  it('behind a reducer of its own it is another line', () => {
    const reducer = thing('PR1', 'pressureReducer', { setPressure: '45 psi', bypass: 'no' })
    expect(told(house([...parts, reducer], [main, line('L2', 'potableCold', 'PT1.branch PR1 MV1.cold')]))).toBe(
      'other-line',
    )
  })

  it('is unknown where its cold pipe leads nobody knows where', () => {
    expect(told(house(parts, [main, line('L2', 'potableCold', 'unknown MV1.cold')]))).toBe('unknown')
  })
})

describe('pressure of the house', () => {
  const water = { staticPressure: '110 psi' }
  const reducer = thing('PR1', 'pressureReducer', { setPressure: '60 psi' })
  const told = (document: Written): readonly string[] => boundsOf(ask(document, 'water', 'housePressure'), 'pressure')

  it('is that of the street without reducer, what the reducer leaves with one', () => {
    expect(told(house([], [], { water }))).toEqual(['110 psi'])
    expect(told(house([reducer], [], { water }))).toEqual(['60 psi'])
  })

  it('is at most that of the street while a reducer may stand unlisted', () => {
    const open = { water, components: [] }
    expect(told(open)).toEqual(['0 psi', '110 psi'])
    expect(missingOf(ask(open, 'water', 'housePressure'))).toEqual(['pressureReducer.count'])
  })
})

describe('what a relief valve protects', () => {
  const valve = (protects: string): Written => ({
    components: [thing('B1', 'boiler'), thing('RV1', 'reliefValve', { protects })],
  })

  it('is the kind of thing it names', () => {
    expect(wordOf(ask(valve('B1'), 'RV1', 'protectedKind'))).toBe('boiler')
    expect(wordOf(ask(valve('unknown'), 'RV1', 'protectedKind'))).toBe('unknown')
  })
})
