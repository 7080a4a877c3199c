import type { Model } from '../../model/index.js'
import { listOf, ref, scalar, strictMap, type JsonSchema } from './json-schema.js'

/** What a document says of itself, around the things it lists. */
export function frameProperties(model: Model, phases: readonly string[]): Readonly<Record<string, JsonSchema>> {
  const countable: JsonSchema = { enum: ['all', 'states', ...model.kindsIn.keys()] }
  return {
    installation: { enum: [1, '1'], description: 'Version of the document schema.' },
    name: { ...scalar, description: 'What people call the job.' },
    phase: { enum: [...phases, 'unknown'], description: 'How far the job is; left out, everything is asked.' },
    units: { enum: ['ip', 'si'], description: 'Units in which reports are printed.' },
    none: { ...listOf(countable), description: 'Kinds of which there are none.' },
    complete: {
      type: 'object',
      propertyNames: countable,
      additionalProperties: ref('count'),
      description: 'How many there are of a kind, a family, of states, or of all things.',
    },
    kept: {
      ...strictMap({ list: listOf({ type: 'string' }), others: { enum: ['new', 'kept', 'unknown'] } }),
      description: 'Things that stay from before, and what the others are.',
    },
    approved: { ...listOf(approval), description: "An official's written acceptance of one departure each." },
  }
}

const approval: JsonSchema = strictMap(
  {
    rule: { type: 'string', description: 'Id of the rule: vent/termination-height.' },
    subject: { type: 'string', description: 'Id of the thing.' },
    accepts: {
      type: 'object',
      additionalProperties: { type: 'object', additionalProperties: scalar },
      description: 'What exactly is accepted: { ventTermination.heightAboveGrade: { atLeast: 34 in } }.',
    },
    by: { ...scalar, description: 'Who accepted it.' },
    evidence: { ...listOf({ type: 'string' }), minItems: 1, description: 'Ids of the letters that say so.' },
    expires: { ...scalar, description: 'The day from which it holds no more.' },
  },
  ['rule', 'subject', 'accepts', 'by', 'evidence'],
)
