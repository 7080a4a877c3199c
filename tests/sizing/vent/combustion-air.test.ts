import { describe, expect, it } from 'vitest'
import {
  type AirAppliance,
  louverFreeArea,
  mechanicalAir,
  openingsBetweenRooms,
  outdoorOpenings,
  roomAirVolume,
  roomAirVolumeByInfiltration,
} from '../../../src/sizing/vent/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'

const heater = (input: string, air: AirAppliance['air']): AirAppliance => ({
  name: 'heater',
  heatInput: si('heatRate', input),
  air,
})
const [cubicFoot, squareInch, hour] = [si('volume', '1 ft3'), si('area', '1 in2'), 3600]
const flat = [heater('36000 Btu/h', 'natural-draft')]

describe('volume of the room', () => {
  // A planted fault, and the water heater of the second sample house.
  it.each([
    ['398000 Btu/h', 19_900],
    ['36000 Btu/h', 1800],
  ])('%s need %s ft3', (input, volume) => {
    expect(numberOf(roomAirVolume({ appliances: [heater(input, 'natural-draft')] })) / cubicFoot).toBeCloseTo(volume, 6)
  })

  it('counts no sealed boiler', () => {
    const sealed = heater('120000 Btu/h', 'sealed')
    expect(numberOf(roomAirVolume({ appliances: [sealed, ...flat] })) / cubicFoot).toBeCloseTo(1800, 6)
    expect(numberOf(roomAirVolume({ appliances: [sealed] }))).toBe(0)
  })

  it('by the standard method is not for a building known to be tight', () => {
    expect(roomAirVolume({ appliances: flat, airChanges: 0.39 / hour })).toMatchObject({ valid: false })
    expect(roomAirVolume({ appliances: flat, airChanges: 0.4 / hour })).toMatchObject({ valid: true, assumed: [] })
  })

  // By hand: 21 / 0.35 x 36 = 2,160 ft3; 15 / 0.35 x 40 = 1,714 ft3; more than 0.60 changes do not count: 21 / 0.6 x 36.
  it('by measured air changes', () => {
    const volume = (appliances: readonly AirAppliance[], changes: number): number =>
      numberOf(roomAirVolumeByInfiltration({ appliances, airChanges: changes / hour })) / cubicFoot
    expect(volume(flat, 0.35)).toBeCloseTo(2160, 6)
    expect(volume([heater('40000 Btu/h', 'fan-assisted')], 0.35)).toBeCloseTo(1714.286, 3)
    expect(volume(flat, 2)).toBeCloseTo(1260, 6)
  })

  it('without any air change cannot be told', () => {
    expect(roomAirVolumeByInfiltration({ appliances: flat, airChanges: 0 }).sized).toBe(false)
  })
})

describe('openings', () => {
  const area = (sizing: Parameters<typeof numberOf>[0]): number => numberOf(sizing) / squareInch

  it('to a room on the same story: 1 in2 for 1,000 Btu/h each, 100 in2 at least', () => {
    expect(area(openingsBetweenRooms({ appliances: flat, stories: 'same' }))).toBeCloseTo(100, 9)
    const large = [heater('150000 Btu/h', 'natural-draft')]
    expect(area(openingsBetweenRooms({ appliances: large, stories: 'same' }))).toBeCloseTo(150, 6)
    expect(area(openingsBetweenRooms({ appliances: large, stories: 'different' }))).toBeCloseTo(300, 6)
    expect(area(openingsBetweenRooms({ appliances: [heater('9 kW', 'sealed')], stories: 'same' }))).toBe(0)
  })

  // By hand from 1 in2 for 4,000, 2,000 and 3,000 Btu/h.
  it.each([
    ['two-direct', 9],
    ['two-horizontal-ducts', 18],
    ['single', 12],
  ] as const)('to the outdoors, %s: %s in2', (way, expected) => {
    const opening = outdoorOpenings({ appliances: flat, way, connectorAreas: [], indoorShare: 0 })
    expect(area(opening)).toBeCloseTo(expected, 6)
  })

  it('a single one is no smaller than the vent connectors together', () => {
    const connectorAreas = [7.07 * squareInch, 12.57 * squareInch]
    const single = outdoorOpenings({ appliances: flat, way: 'single', connectorAreas, indoorShare: 0 })
    expect(area(single)).toBeCloseTo(19.64, 9)
  })

  it('shrinks by the part of the air that the rooms give', () => {
    const combined = (indoorShare: number): number =>
      area(outdoorOpenings({ appliances: flat, way: 'two-direct', connectorAreas: [], indoorShare }))
    expect(combined(0.5)).toBeCloseTo(4.5, 9)
    expect(combined(1.2)).toBe(0)
  })

  it('behind a wooden louver is a quarter free', () => {
    expect(numberOf(louverFreeArea({ grossArea: 1, louver: 'wood' }))).toBe(0.25)
    expect(numberOf(louverFreeArea({ grossArea: 1, louver: 'metal' }))).toBe(0.75)
    expect(numberOf(louverFreeArea({ grossArea: 1, louver: 'none' }))).toBe(1)
  })

  it('or a fan: 0.35 cfm for 1,000 Btu/h', () => {
    expect(numberOf(mechanicalAir(flat)) / si('volumeFlow', '1 cfm')).toBeCloseTo(12.6, 6)
  })

  it('name the appliance whose input cannot be', () => {
    expect(mechanicalAir([{ name: 'WH1', heatInput: -1, air: 'natural-draft' }])).toEqual({
      sized: false,
      why: 'The heat input of WH1 cannot be -1: it is zero or more.',
    })
  })
})
