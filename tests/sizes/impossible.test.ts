import { describe, expect, it } from 'vitest'
import type { SizeLine } from '../../src/checks/index.js'
import type { Edit } from '../../src/model/index.js'
import { sizesSheet } from '../../src/printing/index.js'
import { reasonText } from '../../src/sizing/index.js'
import { sizesOf, sizesOfHouse, type AskedLine } from './asked-size.js'

const set = (address: string, to: unknown): Edit => ({ set: address, to })

interface Row {
  readonly told: string
  readonly edits: readonly Edit[]
  readonly line: AskedLine
  /** As a reader in inch-pound units has it. */
  readonly why: string
}

const expansion = (name: string, of?: string): AskedLine => ({
  topic: 'expansion',
  name,
  ...(of === undefined ? {} : { of }),
})

const rising = {
  complete: 2,
  list: [
    { id: 'still', flow: '0 gpm', head: '5 ft' },
    { id: 'fast', flow: '10 gpm', head: '9 ft' },
  ],
}

const rows: readonly Row[] = [
  {
    told: 'a fill of 900 psi',
    edits: [set('FV1.setPressure', '900 psi')],
    line: expansion('tank needed'),
    why: 'The highest pressure of 27 psi leaves no room above the fill pressure of 900 psi.',
  },
  {
    told: 'a fill of 900 psi, on the tag',
    edits: [set('FV1.setPressure', '900 psi')],
    line: expansion('tag for the gauge', 'EX1'),
    why: 'The highest pressure of 27 psi leaves no room above the fill pressure of 900 psi.',
  },
  {
    told: 'a charge above the relief setting',
    edits: [set('EX1.precharge', '40 psi')],
    line: expansion('water that the tank takes up', 'EX1'),
    why: 'The air charge of 40 psi reaches the highest pressure of 27 psi: no water comes in.',
  },
  {
    told: 'a tank without room',
    edits: [set('EX1.volume', '0 gal')],
    line: expansion('gauge when hot', 'EX1'),
    why: 'The volume of the tank cannot be 0: it is above zero.',
  },
  {
    told: 'a house above the air',
    edits: [set('site.altitude', '200000 ft')],
    line: expansion('tank needed'),
    why: 'At 200000 ft the lower atmosphere has ended.',
  },
  {
    told: 'water of 900 F',
    edits: [set('heatingFluid.highestMean', '900 F')],
    line: expansion('swelling from cold to hot'),
    why: 'Between 50 F and 900 F the fluid has no density by the published formula.',
  },
  {
    told: 'a mixing valve hotter than its store',
    edits: [set('MV1.setTemperature', '190 F')],
    line: { topic: 'hot-water', name: 'hot part at the mixing valve', of: 'T1' },
    why: 'Water at 140 F cannot be mixed to 190 F',
  },
  {
    told: 'cold water warmer than the mixed',
    edits: [set('water.coldest', '150 F')],
    line: { topic: 'hot-water', name: 'first hour, mixed', of: 'T1' },
    why: 'Mixed water at 120 F is no warmer than the cold water at 150 F.',
  },
  {
    told: 'a return hotter than its supply',
    edits: [set('Z1.designDifference', '-20 F')],
    line: { topic: 'emitters', name: 'supply at the design temperature', of: 'Z1' },
    why: 'Water cannot return at 170 F, warmer than its supply at 150 F.',
  },
  {
    told: 'a zone without an emitter',
    edits: [set('Z4.emitters', [])],
    line: { topic: 'emitters', name: 'emitters', of: 'Z4' },
    why: 'The zone Z4 has no emitter.',
  },
  {
    told: 'an emitter without a zone',
    edits: [set('Z4.emitters', [])],
    line: { topic: 'emitters', name: 'output at the design water', of: 'E10' },
    why: 'No zone feeds E10.',
  },
  {
    told: 'an emitter rated below its room',
    edits: [set('E10.ratedDifference', '-90 F')],
    line: { topic: 'emitters', name: 'output at the design water', of: 'E10' },
    why: 'The rated excess of the water over the air cannot be -50: it is above zero.',
  },
  {
    told: 'a cover that gives three times the heat',
    edits: [set('E1.coverFactor', '300 %')],
    line: { topic: 'emitters', name: 'mean water that it needs', of: 'E1' },
    why: 'The part of the output kept cannot be 3: it is a share.',
  },
  {
    told: 'a design day warmer than the rooms',
    edits: [set('site.outdoorDesign', '90 F')],
    line: { topic: 'load', name: 'such a load in a renovated house is' },
    why: 'The indoors above outdoors cannot be -11.111: it is above zero.',
  },
  {
    told: 'a house without floor',
    edits: [set('building.heatedArea', '0 ft2')],
    line: { topic: 'load', name: 'load of a floor area' },
    why: 'The heated area cannot be 0: it is above zero.',
  },
  {
    told: 'a boiler that gives more at its least',
    edits: [set('B1.minimumOutput', '90000 Btu/h')],
    line: { topic: 'boiler', name: 'turndown of all boilers together' },
    why: 'The highest above the lowest output of B1 cannot be -5861.4: it is zero or more.',
  },
  {
    told: 'a boiler that allows no rise',
    edits: [set('B1.maximumRise', '0 F')],
    line: { topic: 'boiler', name: 'least flow at full output', of: 'B1' },
    why: 'The rise of the water cannot be 0: it is above zero.',
  },
  {
    told: 'a pump whose curve rises',
    edits: [set('C1.curve', rising)],
    line: { topic: 'hydraulics', name: 'flows while heating' },
    why: 'The pump curve rises from 60 in to 108 in.',
  },
  {
    told: 'gas without heat',
    edits: [set('fuel.heatingValue', '0 Btu/ft3')],
    line: { topic: 'gas', name: 'gas that it burns', of: 'B1' },
    why: 'The heating value of the gas cannot be 0: it is above zero.',
  },
  {
    told: 'gas without pressure',
    edits: [set('fuel.deliveryPressure', '0 in wc')],
    line: { topic: 'gas', name: 'pressure left with everything on', of: 'B1' },
    why: 'The gas pressure behind the meter cannot be 0: it is above zero.',
  },
  {
    told: 'a gas pipe of 7 in',
    edits: [set('G1.pipe.size', '7')],
    line: { topic: 'gas', name: 'pressure left with everything on', of: 'B1' },
    why: 'No table lists the pipe of G1.',
  },
  {
    told: 'a slip of plain air',
    edits: [set('RD1.oxygen', '25 %')],
    line: { topic: 'condensate', name: 'CO without the air that dilutes it', of: 'RD1' },
    why: 'A sample with 25 % of oxygen is plain air, not flue gas.',
  },
  {
    told: 'a transformer without rating',
    edits: [set('TX1.rating', '0 VA')],
    line: { topic: 'electrical', name: 'share of its rating', of: 'TX1' },
    why: 'The rating of the transformer cannot be 0: it is above zero.',
  },
  {
    told: 'a valve without voltage',
    edits: [set('ZV1.voltage', '0 V')],
    line: { topic: 'electrical', name: 'voltage lost on its wire', of: 'ZV1' },
    why: 'The voltage cannot be 0: it is above zero.',
  },
]

const linesOf = (edits: readonly Edit[]): readonly SizeLine[] =>
  sizesOfHouse('larkspur-lane', edits).topics.flatMap(({ lines }) => lines)
const sizedNames = (lines: readonly SizeLine[]): ReadonlySet<string> =>
  new Set(lines.filter(({ state }) => state === 'sized').map(({ name, of = '' }) => `${name} ${of}`))

describe('numbers that cannot be', () => {
  it.each(rows)('$told: $why', ({ edits, line, why }) => {
    const found = sizesOf('larkspur-lane', edits)(line)
    expect(found.state === 'impossible' ? reasonText(found.why, 'ip') : found.state).toContain(why)
  })

  it.each(rows)('$told: all that rests on something else is still worked out', ({ edits, line }) => {
    const topics = ['load', 'emitters', 'boiler', 'hot-water', 'expansion', 'relief', 'gas', 'vent', 'electrical']
    const still = sizedNames(linesOf(edits))
    expect(still.size).toBeGreaterThan(60)
    const { topics: seen } = sizesOfHouse('larkspur-lane', edits)
    const silent = seen.filter(
      ({ topic, lines }) => topics.includes(topic) && topic !== line.topic && sizedNames(lines).size === 0,
    )
    expect(silent.map(({ topic }) => topic)).toEqual([])
  })

  it.each(rows)('$told: the page can be printed', ({ edits }) => {
    const { sections } = sizesSheet(sizesOfHouse('larkspur-lane', edits))
    const texts = sections.flatMap(({ items }) =>
      items.flatMap(({ head = '', text = '', rows: all }) => [head, text, ...all.map((row) => row.text)]),
    )
    expect(texts.filter((text) => /NaN|Infinity|undefined/.test(text))).toEqual([])
  })

  it('amounts below nothing are refused with the place where they stand', () => {
    expect(() => sizesOf('larkspur-lane', [set('E1.edr', '-5 ft2')])).toThrow(/edr.*never negative/s)
  })
})

describe('a reason as the reader has it', () => {
  it.each([
    ['Water cannot return at 349.8166666666667 K.', 'Water cannot return at 170 F.', 'Water cannot return at 76.7 C.'],
    [
      'Gas section G1: no pressure of 1619.1 Pa.',
      'Gas section G1: no pressure of 0.23 psi.',
      'Gas section G1: no pressure of 1.6 kPa.',
    ],
    ['The rule of 4 % for each 1,000 ft.', 'The rule of 4 % for each 1,000 ft.', 'The rule of 4 % for each 1,000 ft.'],
    [
      'The part cannot be 0.333333333: it is a share.',
      'The part cannot be 0.33333: it is a share.',
      'The part cannot be 0.33333: it is a share.',
    ],
  ])('%s', (why, ip, si) => {
    expect([reasonText(why, 'ip'), reasonText(why, 'si')]).toEqual([ip, si])
  })
})
