import { describe, expect, it } from 'vitest'
import { ask, missingOf, wordOf, type Written } from './asking.js'

const gas = (id: string, path: string): Written => ({ id, medium: 'gas', path: path.split(' ') })
const thing = (id: string, kind: string, more: Written = {}): Written => ({ id, kind, ...more })

const house = (components: readonly Written[], lines: readonly Written[], more: Written = {}): Written => ({
  complete: { all: String(components.length + lines.length) },
  components,
  lines,
  ...more,
})
const meter = thing('GM1', 'gasMeter')
const boiler = thing('B1', 'boiler', { fuel: 'natural-gas', input: '75000 Btu/h' })
const shutoff = thing('SV1', 'gasShutoff')
const trap = thing('ST1', 'sedimentTrap')
const union = thing('GU1', 'gasUnion')

const places = (path: string, more: readonly Written[] = []): readonly string[] => {
  const document = house([meter, boiler, shutoff, trap, union, ...more], [gas('L1', path)])
  return ['gasTrapPlace', 'gasUnionPlace'].map((fact) => wordOf(ask(document, 'B1', fact)))
}

describe('order on the gas pipe of a boiler', () => {
  it('behind the shutoff, in either order', () => {
    expect(places('GM1.out SV1 ST1 GU1 B1.gas')).toEqual(['behind-shutoff', 'behind-shutoff'])
    expect(places('GM1.out SV1 GU1 ST1 B1.gas')).toEqual(['behind-shutoff', 'behind-shutoff'])
  })

  it('ahead of it', () => {
    expect(places('GM1.out GU1 SV1 ST1 B1.gas')).toEqual(['behind-shutoff', 'ahead-of-shutoff'])
    expect(places('GM1.out GU1 ST1 SV1 B1.gas')).toEqual(['ahead-of-shutoff', 'ahead-of-shutoff'])
  })

  it('one in the main, ahead of a branch, is not that of the boiler', () => {
    const tee = thing('TG1', 'gasTee', { capped: ['branch'] })
    expect(places('GM1.out ST1 TG1 SV1 GU1 B1.gas', [tee])).toEqual(['missing', 'behind-shutoff'])
  })

  it('cannot be told behind a stretch that nobody saw', () => {
    expect(places('GM1.out SV1 unknown B1.gas')).toEqual(['unknown', 'unknown'])
    expect(places('GM1.out unknown SV1 GU1 B1.gas')).toEqual(['unknown', 'behind-shutoff'])
  })
})

describe('a line regulator', () => {
  const regulator = thing('GR1', 'gasRegulator')
  const tee = thing('TG1', 'gasTee')
  const range = thing('RA1', 'otherGasAppliance', { fuel: 'natural-gas', input: '60000 Btu/h' })
  const told = (lines: readonly Written[]): readonly string[] => {
    const document = house([meter, boiler, shutoff, regulator, tee, range], lines)
    return ['shutoffAhead', 'applianceAhead'].map((fact) => wordOf(ask(document, 'GR1', fact)))
  }

  it('behind a shutoff, ahead of the branches', () => {
    expect(told([gas('L1', 'GM1.out SV1 GR1 TG1 B1.gas'), gas('L2', 'TG1.branch RA1.gas')])).toEqual(['yes', 'no'])
  })

  it('in the branch of one appliance, the other at full pressure', () => {
    const lines = [gas('L1', 'GM1.out TG1 GR1 SV1 B1.gas'), gas('L2', 'TG1.branch RA1.gas')]
    expect(told(lines)).toEqual(['no', 'yes'])
    const document = house([meter, boiler, shutoff, regulator, tee, range], lines)
    expect(ask(document, 'GR1', 'applianceAhead').witness).toEqual(['GR1.in', 'TG1', 'RA1.gas'])
  })

  it('is unknown where the way from the meter is not drawn', () => {
    expect(told([gas('L1', 'unknown GR1 B1.gas')])).toEqual(['unknown', 'unknown'])
  })
})

describe('load on the gas meter', () => {
  const fuel = { type: 'natural-gas', heatingValue: '1000 Btu/ft3' }
  const heater = thing('WH1', 'waterHeater', { fuel: 'natural-gas', input: '40000 Btu/h' })
  const cubicFeet = (document: Written): readonly (number | string)[] => {
    const answer = ask(document, 'GM1', 'connectedLoad')
    const perHour = 3600 / 0.3048 ** 3
    if (answer.state !== 'number') return [answer.state]
    return [answer.low, answer.high].map((end) => Math.round(end * perHour * 1000) / 1000)
  }

  it('is the sum of all inputs over the heating value', () => {
    expect(cubicFeet(house([meter, boiler, heater], [], { fuel }))).toEqual([115, 115])
  })

  it('oil burns no gas', () => {
    const oil = thing('WH1', 'waterHeater', { fuel: 'oil', input: '40000 Btu/h' })
    expect(cubicFeet(house([meter, boiler, oil], [], { fuel }))).toEqual([75, 75])
  })

  it('is at least what is known, and lacks what is not', () => {
    const blank = thing('WH1', 'waterHeater', { fuel: 'natural-gas' })
    expect(cubicFeet(house([meter, boiler, blank], [], { fuel }))).toEqual([75, Infinity])
    const uncounted = { ...house([meter, boiler], [], { fuel }), complete: { gasMeter: '1' } }
    expect(cubicFeet(uncounted)).toEqual([75, Infinity])
    expect(missingOf(ask(uncounted, 'GM1', 'connectedLoad'))).toEqual(['fuelBurner.count'])
  })

  it('two meters share it nobody knows how', () => {
    const second = thing('GM2', 'gasMeter')
    expect(cubicFeet(house([meter, second, boiler, heater], [], { fuel }))).toEqual([0, 115])
  })

  it('without heating value nothing is known of the volume', () => {
    expect(missingOf(ask(house([meter, boiler], []), 'GM1', 'connectedLoad'))).toContain('fuel.heatingValue')
  })
})
