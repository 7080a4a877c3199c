import { describe, expect, it } from 'vitest'
import { ask, boundsOf, missingOf, wordOf, type Written } from './asking.js'

interface Filled {
  readonly tops?: readonly (string | undefined)[]
  readonly fluid?: Written
  readonly complete?: Written
}

const emitters = (tops: readonly (string | undefined)[]): readonly Written[] =>
  tops.map((top, index) => ({
    id: `E${index + 1}`,
    kind: 'finTube',
    ...(top === undefined ? {} : { topElevation: top }),
  }))

const house = ({ tops = ['25.5 ft'], fluid = { antifreeze: 'no-antifreeze' }, complete }: Filled): Written => ({
  complete: complete ?? { emitter: String(tops.length) },
  heatingFluid: fluid,
  components: [{ id: 'FV1', kind: 'fillValve' }, ...emitters(tops)],
})

const pressure = (filled: Filled): readonly string[] =>
  boundsOf(ask(house(filled), 'FV1', 'staticPressure'), 'pressure')
const psi = (filled: Filled): readonly number[] => pressure(filled).map((text) => Number.parseFloat(text))

describe('pressure of the standing water', () => {
  it('the highest emitter decides', () => {
    expect(pressure({ tops: ['9.5 ft', '25.5 ft', '19.5 ft'] })).toEqual(['11.1 psi'])
    expect(ask(house({}), 'FV1', 'staticPressure').witness).toEqual(['E1 25.5 ft', 'water 1000 kg/m3'])
  })

  it('glycol is heavier', () => {
    const fluid = { antifreeze: 'propylene-glycol', concentration: '35 %' }
    expect(psi({ tops: ['33 ft'] })[0]).toBeCloseTo(14.3, 1)
    expect(psi({ tops: ['33 ft'], fluid })[0]).toBeCloseTo(14.8, 1)
  })

  it('an emitter that is not listed can only stand higher', () => {
    expect(pressure({ complete: {} })).toEqual(['11.1 psi', 'no upper limit'])
    expect(missingOf(ask(house({ complete: {} }), 'FV1', 'staticPressure'))).toEqual(['emitter.count'])
  })

  it('so does one whose height nobody measured', () => {
    expect(pressure({ tops: ['25.5 ft', undefined] })).toEqual(['11.1 psi', 'no upper limit'])
    expect(missingOf(ask(house({ tops: ['25.5 ft', undefined] }), 'FV1', 'staticPressure'))).toEqual([
      'E2.topElevation',
    ])
  })

  it('no height at all is no number', () => {
    expect(pressure({ tops: [undefined] })).toEqual(['unknown'])
    expect(pressure({ tops: [] })).toEqual(['unknown'])
    expect(missingOf(ask(house({ tops: [] }), 'FV1', 'staticPressure'))).toEqual(['emitter.count'])
  })

  it('an emitter at the height of the gauge asks for nothing', () => {
    expect(pressure({ tops: ['0 ft'] })).toEqual(['0 psi'])
  })

  it('glycol of unknown strength lies between water and the densest mixture', () => {
    const [low, high] = psi({ tops: ['33 ft'], fluid: { antifreeze: 'propylene-glycol' } })
    expect(low).toBeCloseTo(14.3, 1)
    expect(high).toBeGreaterThan(14.8)
    expect(high).toBeLessThan(15.6)
    const missing = missingOf(ask(house({ fluid: { antifreeze: 'propylene-glycol' } }), 'FV1', 'staticPressure'))
    expect(missing).toEqual(['heatingFluid.concentration'])
  })

  it('a fluid of which nothing is said, and one that is not listed, may be any heavier: no guess at water', () => {
    expect(pressure({ fluid: {} })).toEqual(['11 psi', 'no upper limit'])
    expect(pressure({ fluid: { antifreeze: 'unlisted' } })).toEqual(['11.1 psi', 'no upper limit'])
    expect(missingOf(ask(house({ fluid: {} }), 'FV1', 'staticPressure'))).toEqual(['heatingFluid.antifreeze'])
    const silent = {
      complete: { emitter: '1' },
      components: [{ id: 'FV1', kind: 'fillValve' }, ...emitters(['25.5 ft'])],
    }
    expect(missingOf(ask(silent, 'FV1', 'staticPressure'))).toEqual(['heatingFluid.antifreeze'])
  })
})

describe('whether the heating water is treated', () => {
  const treated = (heatingFluid: Written): string => wordOf(ask({ heatingFluid }, 'heatingFluid', 'treated'))

  it('antifreeze or one additive is enough', () => {
    expect(treated({ antifreeze: 'unlisted' })).toBe('yes')
    expect(treated({ additives: ['inhibitor'] })).toBe('yes')
    expect(treated({ antifreeze: 'no-antifreeze', additives: ['unknown', 'sealant'] })).toBe('yes')
  })

  it('plain water is a statement about both', () => {
    expect(treated({ antifreeze: 'no-antifreeze', additives: [] })).toBe('no')
    expect(treated({ antifreeze: 'no-antifreeze' })).toBe('unknown')
    expect(treated({ additives: [] })).toBe('unknown')
    expect(treated({ antifreeze: 'no-antifreeze', additives: ['unknown'] })).toBe('unknown')
    expect(missingOf(ask({ heatingFluid: { antifreeze: 'no-antifreeze' } }, 'heatingFluid', 'treated'))).toEqual([
      'heatingFluid.additives',
    ])
  })
})

describe('the charge of a tank against the fill', () => {
  const filled = (device: Written, tank: Written): Written => ({
    complete: { fillDevice: '1' },
    components: [
      { id: 'FV1', ...device },
      { id: 'EX1', kind: 'expansionTank', precharge: '12 psi', ...tank },
    ],
  })
  const valve = { kind: 'fillValve', setPressure: '16 psi' }
  const empty = { prechargeWaterSideEmpty: 'yes' }
  const gapOf = (document: Written): readonly string[] => boundsOf(ask(document, 'EX1', 'chargeGap'), 'pressure')

  it('is the difference to either side, whatever fills', () => {
    expect(gapOf(filled(valve, empty))).toEqual(['4 psi'])
    expect(gapOf(filled({ ...valve, setPressure: '8 psi' }, empty))).toEqual(['4 psi'])
    expect(gapOf(filled({ ...valve, kind: 'combinedFillDevice' }, empty))).toEqual(['4 psi'])
  })

  it('is not known while nobody said that the water side was empty, nor from a reading with water on', () => {
    expect(missingOf(ask(filled(valve, {}), 'EX1', 'chargeGap'))).toEqual(['EX1.prechargeWaterSideEmpty'])
    const full = { prechargeWaterSideEmpty: 'no' }
    expect(missingOf(ask(filled(valve, full), 'EX1', 'chargeGap'))).toEqual(['EX1.precharge'])
  })

  it('is not known while another device may fill', () => {
    const open = { ...filled(valve, empty), complete: {} }
    expect(missingOf(ask(open, 'EX1', 'chargeGap'))).toEqual(['fillDevice.count'])
  })
})
