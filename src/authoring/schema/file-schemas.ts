import * as z from 'zod/mini'
import { isMap } from '../../model/index.js'
import {
  addChangeShape,
  demandChangeShape,
  exemptChangeShape,
  operators,
  overlayShape,
  ruleShape,
} from '../../rulebook/index.js'
import { conditionDefs } from './condition-schema.js'
import { exampleSchema, factsSchema } from './example-schema.js'
import { dialect, listOf, ref, type JsonSchema } from './json-schema.js'
import { without } from '../without.js'
import { keyWords } from './key-words.js'

/** The schema of rule files. */
export function ruleSchema(subjects: readonly string[]): JsonSchema {
  const description = 'One rule: of whom it is asked, when it applies, what it demands, in which words.'
  return { $schema: dialect, title: 'Rule', description, ...shapeSchema(ruleShape), $defs: definitions(subjects) }
}

/** Subjects are offered, and others let pass: a plugin may bring kinds of its own. */
function definitions(subjects: readonly string[]): Readonly<Record<string, JsonSchema>> {
  return { ...conditionDefs, subject: { anyOf: [{ enum: subjects }, { type: 'string' }] } }
}

/** The schema of overlay files. The verb of a change decides what else it has. */
export function overlaySchema(subjects: readonly string[]): JsonSchema {
  const id = { type: 'string', description: 'Id of the rule within the overlay: fill/pressure-sign.' }
  const added = { ...shapeSchema(ruleShape), properties: { id, ...propertiesOf(shapeSchema(ruleShape)) } }
  const add = shapeSchema(addChangeShape)
  const shape = shapeSchema(overlayShape)
  const change = {
    anyOf: [ref('demandChange'), ref('exemptChange'), ref('addChange')],
    description: 'One of the verbs demand, exempt, add, with what belongs to it.',
  }
  return {
    $schema: dialect,
    title: 'Overlay',
    description: "An authority's file: demands it adds, demands it lets go, rules of its own.",
    ...shape,
    properties: { ...propertiesOf(shape), changes: listOf(change) },
    $defs: {
      ...definitions(subjects),
      demandChange: shapeSchema(demandChangeShape),
      exemptChange: shapeSchema(exemptChangeShape),
      addChange: { ...add, properties: { ...propertiesOf(add), add: added } },
    },
  }
}

function propertiesOf(schema: JsonSchema): Readonly<Record<string, unknown>> {
  return isMap(schema.properties) ? schema.properties : {}
}

function shapeSchema(shape: z.ZodMiniType): JsonSchema {
  const asWritten = written(without({ ...z.toJSONSchema(shape) }, '$schema'), [])
  return isMap(asWritten) ? asWritten : {}
}

/** Keys whose contents the shapes leave open, because they are read once the shape is known to hold. */
const open: Readonly<Record<string, JsonSchema>> = {
  subject: ref('subject'),
  operator: { enum: operators },
  when: ref('condition'),
  require: ref('condition'),
  value: ref('value'),
  given: factsSchema,
  examples: listOf(exampleSchema),
}

/** The schema for files in an editor, where YAML scalars are numbers and truth values as well as text; keys carry their meaning. */
function written(schema: unknown, path: readonly string[]): unknown {
  if (Array.isArray(schema)) return schema.map((one: unknown) => written(one, path))
  if (!isMap(schema)) return schema
  if (Array.isArray(schema.enum)) return { ...about(path), enum: [...new Set(schema.enum.flatMap(alsoTruth))] }
  if (schema.type === 'string') return { ...about(path), type: ['string', 'number', 'boolean'] }
  const inner = Object.entries(schema).map(([key, value]) => {
    if (key === 'properties' && isMap(value))
      return [key, Object.fromEntries(Object.entries(value).map(([name, one]) => [name, property(name, one, path)]))]
    return [key, key === 'propertyNames' || key === 'required' ? value : written(value, [...path, key])]
  })
  const made: unknown = Object.fromEntries(inner)
  return isMap(made) ? { ...about(path), ...made } : made
}

function property(name: string, schema: unknown, path: readonly string[]): unknown {
  const steps = [...path, name]
  return Object.hasOwn(open, name) ? { ...about(steps), ...open[name] } : written(schema, steps)
}

function about(path: readonly string[]): JsonSchema {
  const key = path.at(-1) ?? ''
  const said = [path.slice(-2).join('.'), key].find((name) => Object.hasOwn(keyWords, name))
  return said === undefined ? {} : { description: keyWords[said] }
}

function alsoTruth(word: unknown): readonly unknown[] {
  if (word === 'true' || word === 'yes') return [word, true]
  return word === 'false' || word === 'no' ? [word, false] : [word]
}
