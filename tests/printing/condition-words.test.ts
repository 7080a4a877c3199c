import { describe, expect, it } from 'vitest'
import { base } from '../../src/base.js'
import { conditionWords } from '../../src/printing/condition-words.js'
import { definePlugin, openRulebook } from '../../src/rulebook/index.js'

const wordsOf = (require: unknown): string => {
  const rules = {
    'a/b': {
      title: 'T',
      subject: 'ventTermination',
      demands: [
        {
          id: 'd',
          severity: 'should',
          require,
          basis: [{ source: 'practice', ground: 'practice', known: 'recalled' }],
        },
      ],
      say: { fail: 'F' },
      because: 'B',
    },
  }
  const { rules: made } = openRulebook({ ruleSets: [definePlugin({ ...base, rules })] })
  return made.flatMap(({ demands }) => demands.map((demand) => conditionWords(demand.require))).join()
}

const high = { 'ventTermination.heightAboveGrade': { atLeast: '12 in' } }
const exhaust = { 'ventTermination.serves': 'exhaust' }

describe('a condition in words', () => {
  it.each([
    [high, 'ventTermination.heightAboveGrade is at least 12 in'],
    [exhaust, 'ventTermination.serves is exhaust'],
    [{ not: exhaust }, 'not (ventTermination.serves is exhaust)'],
    [
      { all: [high, exhaust] },
      'ventTermination.heightAboveGrade is at least 12 in and ventTermination.serves is exhaust',
    ],
    [
      { any: [high, { all: [exhaust, high] }] },
      'ventTermination.heightAboveGrade is at least 12 in or (ventTermination.serves is exhaust and ventTermination.heightAboveGrade is at least 12 in)',
    ],
    [
      { 'ventTermination.heightAboveGrade': { between: ['12 in', '40 in'] } },
      'ventTermination.heightAboveGrade is between 12 in and 40 in',
    ],
    [
      { 'ventTermination.heightAboveGrade': { moreThan: { sum: ['12 in', { fact: 'site.snowLine' }] } } },
      'ventTermination.heightAboveGrade is more than 12 in + site.snowLine',
    ],
    [
      {
        'ventTermination.heightAboveGrade': {
          lessThan: { largest: ['12 in', { times: '1.5', of: { fact: 'site.snowLine' } }] },
        },
      },
      'ventTermination.heightAboveGrade is less than the largest of 12 in, 1.5 times site.snowLine',
    ],
  ])('%j', (require, expected) => {
    expect(wordsOf(require)).toBe(expected)
  })
})
