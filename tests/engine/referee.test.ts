import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exportJudged, foldResult } from '../../src/engine/index.js'
import { known, openView, word, type View } from '../../src/facts/index.js'
import { readInstallation, type Thing } from '../../src/model/index.js'
import { compare, factsOf, judgeCondition, type Condition, type Judged } from '../../src/rulebook/index.js'
import { conditions } from './random-conditions.js'
import { referee } from './referee.js'
import { rulebook } from './workshop.js'

const installation = readInstallation({ installation: 1, components: [{ id: 'K1', kind: 'kettle' }] }, rulebook.model)
const view: View = openView(installation)
const subject: Thing = installation.things.get('K1')!

const judged = (condition: Condition): Judged => judgeCondition(condition, view, subject)

describe('an untouched json-rules-engine', () => {
  it('agrees on 10,000 condition trees with all facts known', async () => {
    const seen = { '-1': 0, 0: 0, 1: 0 }
    await fc.assert(
      fc.asyncProperty(conditions('all known'), async (condition) => {
        const ours = judged(condition)
        seen[ours.truth]++
        expect(ours.truth).toBe((await referee(exportJudged(ours))).result === true ? 1 : -1)
      }),
      { numRuns: 10_000 },
    )
    expect(seen[0]).toBe(0)
    expect(Math.min(seen[1], seen['-1'])).toBeGreaterThan(2_000)
  }, 120_000)

  it('agrees, its annotated tree folded, on 4,000 trees with some facts missing', async () => {
    const seen = { '-1': 0, 0: 0, 1: 0 }
    await fc.assert(
      fc.asyncProperty(conditions('some missing'), async (condition) => {
        const ours = judged(condition)
        seen[ours.truth]++
        expect(foldResult((await referee(exportJudged(ours))).conditions)).toBe(ours.truth)
      }),
      { numRuns: 4_000 },
    )
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(400)
  }, 120_000)

  it('agrees on 4,000 trees with bounds, where one amount stands for a bound that decides', async () => {
    await fc.assert(
      fc.asyncProperty(conditions('some bounded'), async (condition) => {
        const ours = judged(condition)
        expect(foldResult((await referee(exportJudged(ours))).conditions)).toBe(ours.truth)
      }),
      { numRuns: 4_000 },
    )
  }, 120_000)

  it('is not asked of trees so simple that they could not disagree', () => {
    const trees = fc.sample(conditions('all known'), { numRuns: 500, seed: 7 })
    const sizes = trees.map((tree) => factsOf(tree).length)
    expect(sizes.filter((size) => size > 3).length).toBeGreaterThan(100)
  })

  it('sees amounts that differ by round-off only as equal, as we do', async () => {
    const leaf: Condition = {
      type: 'leaf',
      fact: { path: 'thing.amount', type: { type: 'quantity', quantity: 'pressure' }, ask: () => known(0.1 + 0.2) },
      operator: 'moreThan',
      values: [{ type: 'constant', answer: known(0.3), text: '' }],
    }
    const ours = judged(leaf)
    expect([ours.truth, (await referee(exportJudged(ours))).result]).toEqual([-1, false])
  })

  it('trap 19: takes text for a number, which our operators refuse', async () => {
    const stock = await referee({
      conditions: { all: [{ fact: 'x', operator: 'lessThan', value: 6 }] },
      facts: { x: '5' },
    })
    expect(stock.result).toBe(true)
    expect(compare('lessThan', word('5'), [known(6)])).toBe(0)
  })

  it('trap 18: lets what is missing pass, which the fold does not', async () => {
    const missing = await referee({
      conditions: {
        all: [{ fact: 'x', operator: 'notEqual', value: 6 }, { not: { fact: 'y', operator: 'equal', value: 1 } }],
      },
      facts: {},
    })
    expect(missing.result).toBe(true)
    expect(foldResult(missing.conditions)).toBe(0)
  })
})

describe('the fold of an annotated tree', () => {
  const leaf = (result: boolean | undefined, factResult: unknown = 1, valueResult: unknown = 1) => ({
    fact: 'x',
    operator: 'equal',
    value: 1,
    factResult,
    valueResult,
    ...(result === undefined ? {} : { result }),
  })

  it.each([
    ['holds', leaf(true), 1],
    ['does not hold', leaf(false), -1],
    ['was never reached', leaf(undefined), 0],
    ['has no fact', leaf(true, null), 0],
    ['has a fact that is no number', leaf(false, Number.NaN), 0],
    ['is compared with nothing', leaf(true, 1, null), 0],
    ['is refused', { not: leaf(true) }, -1],
    ['is refused and missing', { not: leaf(true, null) }, 0],
    ['has one that fails beside one missing', { all: [leaf(false), leaf(true, null)] }, -1],
    ['has one that holds beside one missing', { any: [leaf(true), leaf(true, null)] }, 1],
    ['refers to a condition that was never reached', { condition: 'later' }, 0],
  ] as const)('comes to the right value when it %s', (_, tree, truth) => {
    expect(foldResult(tree)).toBe(truth)
  })
})
