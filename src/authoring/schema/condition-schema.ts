import { operators } from '../../rulebook/index.js'
import { listOf, ref, scalar, strictMap, type JsonSchema } from './json-schema.js'

const some = (items: JsonSchema): JsonSchema => ({ ...listOf(items), minItems: 1 })

/** Condition trees and values of rules, long and short. Which facts a rule may mention depends on its subject and is checked by the linter. */
export const conditionDefs: Readonly<Record<string, JsonSchema>> = {
  condition: {
    description:
      'all, any, not, { fact, operator, value }, or short: { ventRun.work: new }, { opening.distance: { atLeast: 12 in } }.',
    anyOf: [
      strictMap({ all: some(ref('condition')) }, ['all']),
      strictMap({ any: some(ref('condition')) }, ['any']),
      strictMap({ not: ref('condition') }, ['not']),
      strictMap({ fact: { type: 'string' }, operator: { enum: operators }, value: ref('value') }, [
        'fact',
        'operator',
        'value',
      ]),
      {
        type: 'object',
        minProperties: 1,
        maxProperties: 1,
        patternProperties: { '^[A-Za-z/-]+[.]': ref('comparison') },
        additionalProperties: false,
      },
    ],
  },
  comparison: {
    anyOf: [
      scalar,
      listOf(scalar),
      {
        type: 'object',
        minProperties: 1,
        maxProperties: 1,
        properties: Object.fromEntries(operators.map((operator) => [operator, ref('value')])),
        additionalProperties: false,
      },
    ],
  },
  value: {
    description:
      'Text such as 18 in, a list of words, { fact: ... }, { sum: [...] }, { largest: [...] }, { smallest: [...] } or { times: 1.5, of: ... }.',
    anyOf: [
      scalar,
      listOf(ref('value')),
      strictMap({ fact: { type: 'string' } }, ['fact']),
      strictMap({ sum: some(ref('value')) }, ['sum']),
      strictMap({ largest: some(ref('value')) }, ['largest']),
      strictMap({ smallest: some(ref('value')) }, ['smallest']),
      strictMap({ times: { type: ['string', 'number'] }, of: ref('value') }, ['times', 'of']),
    ],
  },
}
