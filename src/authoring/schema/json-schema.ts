/** A JSON Schema, draft 2020-12, as plain data. */
export type JsonSchema = Readonly<Record<string, unknown>>

export const dialect = 'https://json-schema.org/draft/2020-12/schema'

export const ref = (name: string): JsonSchema => ({ $ref: `#/$defs/${name}` })

/** Text, or the number or truth value that an editor takes a YAML scalar for. */
export const scalar: JsonSchema = { type: ['string', 'number', 'boolean'] }

/** A map with exactly these keys, and notes of the writer's own under `x-`. */
export function closedMap(
  properties: Readonly<Record<string, JsonSchema>>,
  required: readonly string[] = [],
): JsonSchema {
  return {
    type: 'object',
    properties,
    ...(required.length === 0 ? {} : { required }),
    patternProperties: { '^x-': true },
    additionalProperties: false,
  }
}

/** A map with exactly these keys. */
export function strictMap(
  properties: Readonly<Record<string, JsonSchema>>,
  required: readonly string[] = [],
): JsonSchema {
  return { type: 'object', properties, ...(required.length === 0 ? {} : { required }), additionalProperties: false }
}

export const listOf = (items: JsonSchema): JsonSchema => ({ type: 'array', items })

/** What a map is by the word under one of its keys: one branch a word. */
export function branches(key: string, byWord: Readonly<Record<string, JsonSchema>>): readonly JsonSchema[] {
  return Object.entries(byWord).map(([word, then]) => ({
    if: { properties: { [key]: { const: word } }, required: [key] },
    then,
  }))
}
