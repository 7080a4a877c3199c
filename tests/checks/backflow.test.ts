import { describe, expect, it } from 'vitest'
import { ask, missingOf, wordOf, type Written } from './asking.js'

const cold = (id: string, path: string): Written => ({ id, medium: 'potableCold', path: path.split(' ') })
const heating = (id: string, path: string): Written => ({ id, medium: 'heatingWater', path: path.split(' ') })

/** A boiler whose only other joint is the fill line. */
const house = (lines: readonly Written[], more: readonly Written[] = []): Written => ({
  complete: { all: String(5 + lines.length + more.length) },
  components: [
    { id: 'B1', kind: 'boiler', capped: ['supply', 'relief'] },
    { id: 'WS1', kind: 'waterService' },
    { id: 'BFP1', kind: 'backflowPreventer' },
    { id: 'FV1', kind: 'fillValve' },
    { id: 'TE1', kind: 'tee' },
    ...more,
  ],
  lines,
})
const inOrder = [cold('L1', 'WS1.out BFP1.in'), heating('L2', 'BFP1.out FV1 TE1.a'), heating('L3', 'TE1.b B1.return')]

const joined = (document: Written): string => wordOf(ask(document, 'B1', 'drinkingWaterJoined'))
const order = (document: Written): string => wordOf(ask(document, 'FV1', 'backflowOrder'))

describe('where the backflow device stands', () => {
  it('ahead of the fill valve', () => {
    expect(order(house(inOrder))).toBe('ahead')
    expect(ask(house(inOrder), 'FV1', 'backflowOrder').missing).toEqual([])
  })

  it('behind it, with the way from street to device', () => {
    const swapped = house([
      cold('L1', 'WS1.out FV1 BFP1.in'),
      heating('L2', 'BFP1.out TE1.a'),
      heating('L3', 'TE1.b B1.return'),
    ])
    expect(order(swapped)).toBe('behind')
    expect(ask(swapped, 'FV1', 'backflowOrder').witness).toEqual(['WS1.out', 'FV1.in', 'FV1.out', 'BFP1.in'])
  })

  it('nowhere', () => {
    const bare = house([cold('L1', 'WS1.out FV1.in'), heating('L2', 'FV1.out TE1.a'), heating('L3', 'TE1.b B1.return')])
    expect(order({ ...bare, none: ['combinedFillDevice'] })).toBe('unknown')
    expect(missingOf(ask(bare, 'FV1', 'backflowOrder'))).toContain('TE1.branch')
    const shut = {
      ...bare,
      components: [
        { id: 'B1', kind: 'boiler', capped: ['supply', 'relief'] },
        { id: 'WS1', kind: 'waterService' },
        { id: 'BFP1', kind: 'backflowPreventer', capped: ['in', 'out'] },
        { id: 'FV1', kind: 'fillValve' },
        { id: 'TE1', kind: 'tee', capped: ['branch'] },
      ],
    }
    expect(order(shut)).toBe('missing')
  })

  it('a combined body is both at one place', () => {
    const combined = house(
      [cold('L1', 'WS1.out CF1.in'), heating('L2', 'CF1.out FV1 TE1.a'), heating('L3', 'TE1.b B1.return')],
      [{ id: 'CF1', kind: 'combinedFillDevice' }],
    )
    expect(order(combined)).toBe('ahead')
  })

  it('can be stated, and is unknown where nothing is drawn', () => {
    expect(order({ components: [{ id: 'FV1', kind: 'fillValve' }] })).toBe('unknown')
    expect(order({ components: [{ id: 'FV1', kind: 'fillValve', backflowOrder: 'behind' }] })).toBe('behind')
  })
})

describe('drinking water joined to heating water', () => {
  const tight = (lines: readonly Written[], more: readonly Written[] = []): Written => {
    const open = house(lines, more)
    return {
      ...open,
      components: [
        { id: 'B1', kind: 'boiler', capped: ['supply', 'relief'] },
        { id: 'WS1', kind: 'waterService' },
        { id: 'BFP1', kind: 'backflowPreventer' },
        { id: 'FV1', kind: 'fillValve' },
        { id: 'TE1', kind: 'tee', capped: lines.some(({ id }) => id === 'L4') ? [] : ['branch'] },
        ...more,
      ],
    }
  }

  it('no: the only way passes the device', () => {
    expect(joined(tight(inOrder))).toBe('no')
  })

  it('yes: a stop leads round the device, with the way', () => {
    const round = tight(
      [...inOrder, heating('L4', 'PS1.b TE1.branch'), cold('L5', 'WS2.out PS1.a')],
      [
        { id: 'PS1', kind: 'potableStop' },
        { id: 'WS2', kind: 'waterService' },
      ],
    )
    expect(joined(round)).toBe('yes')
    expect(ask(round, 'B1', 'drinkingWaterJoined').witness).toEqual(['B1.return', 'TE1', 'PS1', 'WS2.out'])
  })

  it('no: the coil of a tank is a wall, not a way', () => {
    const tank = tight(
      [...inOrder, heating('L4', 'TE1.branch T1.coilIn')],
      [{ id: 'T1', kind: 'indirectTank', capped: ['coilOut', 'relief'] }],
    )
    expect(joined(tank)).toBe('no')
  })

  it('unknown while a branch leads nobody knows where, or nothing is drawn', () => {
    expect(joined(house(inOrder))).toBe('unknown')
    expect(missingOf(ask(house(inOrder), 'B1', 'drinkingWaterJoined'))).toEqual([
      'TE1.branch',
      'B1.drinkingWaterJoined',
    ])
    expect(joined({ components: [{ id: 'B1', kind: 'boiler' }] })).toBe('unknown')
  })
})
