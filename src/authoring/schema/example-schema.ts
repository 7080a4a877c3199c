import { severities } from '../../rulebook/index.js'
import { listOf, scalar, strictMap, type JsonSchema } from './json-schema.js'

const expect: JsonSchema = {
  description: 'What the rule comes to.',
  anyOf: [
    { enum: ['pass', 'undecided', 'not-applicable'] },
    strictMap({ fail: { enum: severities }, couldBe: { enum: severities } }, ['fail']),
  ],
}

/** Facts by name, each short or long. */
export const factsSchema: JsonSchema = { type: 'object', additionalProperties: true }

/** Examples of a rule: by facts, or by edits on a small installation. */
export const exampleSchema: JsonSchema = {
  anyOf: [
    strictMap({ name: scalar, facts: factsSchema, expect }, ['name', 'facts', 'expect']),
    strictMap(
      { name: scalar, of: { type: 'string' }, edits: listOf({ type: 'object' }), subject: { type: 'string' }, expect },
      ['of', 'expect'],
    ),
  ],
}
