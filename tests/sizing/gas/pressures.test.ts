import { describe, expect, it } from 'vitest'
import { gasPressures, type PipedSection, withGravity } from '../../../src/sizing/gas/index.js'
import { gasFlow } from '../../../src/tables/index.js'
import { si } from '../../../src/units/index.js'
import { numberOf } from '../number-of.js'
import { whyOf } from '../why-of.js'

const feet = si('length', '1 ft')
const inchOfWater = si('pressure', '1 in wc')
const psi = si('pressure', '1 psi')
const btuPerHour = si('heatRate', '1 Btu/h')
const steel = { '1/2': 0.622, '3/4': 0.824, '1': 1.049, '1-1/4': 1.38 } as const

const section = (id: string, after: string, size: keyof typeof steel, length: number, input: number): PipedSection => ({
  id,
  ...(after === '' ? {} : { after }),
  bore: { insideDiameter: steel[size] * si('length', '1 in') },
  length: length * feet,
  input: input * btuPerHour,
})

const house = {
  gas: gasFlow('natural-gas'),
  heatingValue: 1025 * si('energyPerVolume', '1 Btu/ft3'),
  delivery: 7 * inchOfWater,
  atmosphere: 14.7 * psi,
}

function endsOf(
  sections: readonly PipedSection[],
  change: Partial<typeof house> = {},
): ReadonlyMap<string, ReturnType<typeof pressure>> {
  const pressures = gasPressures({ ...house, ...change, sections })
  if (!pressures.ok) throw new Error(pressures.why)
  return new Map(pressures.ends.map((end) => [end.id, pressure(end)]))
}

const pressure = (end: Extract<ReturnType<typeof gasPressures>, { ok: true }>['ends'][number]) => end.pressure

/** in wc lost from the meter to the end of a section. */
const lost = (ends: ReturnType<typeof endsOf>, id: string): number => 7 - numberOf(ends.get(id)!) / inchOfWater

function near(actual: number, expected: number): void {
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThan(0.02 * expected + 0.001)
}

describe('everything fires', () => {
  // First house, printed: drops G1 .076, G2 .031, G3 .055, G4 .135, G5 .008; boiler .107, range .266.
  it('first house', () => {
    const ends = endsOf([
      section('G1', '', '1', 24, 0),
      section('G2', 'G1', '3/4', 12, 75_000),
      section('G3', 'G1', '3/4', 18, 0),
      section('G4', 'G3', '1/2', 20, 60_000),
      section('G5', 'G3', '1/2', 8, 22_000),
    ])
    near(lost(ends, 'G1'), 0.076)
    near(lost(ends, 'G2'), 0.107)
    near(lost(ends, 'G4'), 0.266)
    near(lost(ends, 'G5') - lost(ends, 'G3'), 0.008)
  })

  // Second house, printed: boiler .096, range .162, heater .108.
  it('second house', () => {
    const ends = endsOf([
      section('H1', '', '1-1/4', 22, 0),
      section('H2', 'H1', '1', 14, 0),
      section('H3', 'H2', '1', 6, 120_000),
      section('H4', 'H2', '1/2', 9, 36_000),
      section('H5', 'H1', '3/4', 26, 0),
      section('H6', 'H5', '3/4', 16, 65_000),
      section('H7', 'H5', '1/2', 10, 22_000),
    ])
    near(lost(ends, 'H3'), 0.096)
    near(lost(ends, 'H6'), 0.162)
    near(lost(ends, 'H4'), 0.108)
  })

  // Mutation of the first house: the boiler's branch as 60 ft of 1/2 in. Alone at 73.2 cfh it loses 0.42 in wc... twice the
  // flow of 35 cfh raises the drop by 2 ** (0.381 / 0.206) = 3.6.
  it('a narrow branch is named with what it loses', () => {
    const ends = endsOf([section('G1', '', '1', 24, 0), section('G2', 'G1', '1/2', 60, 75_000)])
    const half = endsOf([section('G1', '', '1', 24, 0), section('G2', 'G1', '1/2', 60, 37_500)])
    const along = (of: ReturnType<typeof endsOf>): number => lost(of, 'G2') - lost(of, 'G1')
    expect(along(ends) / along(half)).toBeCloseTo(2 ** (0.381 / 0.206), 6)
    expect(ends.get('G2')).toMatchObject({
      working: expect.arrayContaining([expect.objectContaining({ name: 'lost along G2' })]),
    })
  })
})

describe('other pipes', () => {
  it('two-psi house: high pressure to the regulator, low behind it', () => {
    const ends = endsOf(
      [
        { ...section('A', '', '1/2', 60, 0), regulatedTo: 8 * inchOfWater },
        section('B', 'A', '3/4', 20, 75_000),
        { ...section('C', 'A', '1/2', 20, 30_000), bore: { ehd: 18 } },
      ],
      { delivery: 2 * psi },
    )
    expect(numberOf(ends.get('A')!)).toBeCloseTo(8 * inchOfWater, 9)
    expect(numberOf(ends.get('B')!)).toBeLessThan(8 * inchOfWater)
    expect(numberOf(ends.get('C')!)).toBeLessThan(8 * inchOfWater)
    expect(ends.get('C')).toMatchObject({ valid: true })
  })

  it('a heavier gas loses more', () => {
    const run = [section('A', '', '1/2', 60, 60_000)]
    const tubing = [{ ...section('A', '', '1/2', 60, 60_000), bore: { ehd: 19 } }]
    const heavier = { gas: withGravity(house.gas, 0.7) }
    for (const sections of [run, tubing])
      expect(lost(endsOf(sections, heavier), 'A')).toBeGreaterThan(lost(endsOf(sections), 'A'))
  })

  it('what cannot be is named, and the rest is told', () => {
    const ends = endsOf([
      section('A', '', '1', 24, 0),
      section('B', 'A', '3/4', 12, 75_000),
      section('C', 'A', '1/2', 400, 400_000),
      { ...section('D', 'A', '1/2', 10, 20_000), bore: { ehd: 20 } },
      { ...section('E', 'A', '1/2', 10, 20_000), regulatedTo: 11 * inchOfWater },
    ])
    expect(ends.get('B')).toMatchObject({ sized: true })
    expect(whyOf(ends.get('C')!)).toContain('Gas section C')
    expect(whyOf(ends.get('D')!)).toContain('EHD 20')
    expect(whyOf(ends.get('E')!)).toContain('too little pressure')
  })

  it('tubing at two psi is left to its maker; impossible houses are refused', () => {
    const tubing = { ...section('A', '', '1/2', 10, 20_000), bore: { ehd: 18 } }
    expect(whyOf(endsOf([tubing], { delivery: 2 * psi }).get('A')!)).toContain('table of its maker')
    for (const change of [{ delivery: 0 }, { heatingValue: NaN }, { atmosphere: -1 }])
      expect(gasPressures({ ...house, ...change, sections: [tubing] })).toMatchObject({ ok: false })
    expect(gasPressures({ ...house, sections: [] })).toMatchObject({ ok: false })
  })
})
