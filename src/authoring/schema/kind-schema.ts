import { fieldsOfEvery, type Fields, type KindSpec, type LeafField } from '../../model/index.js'
import type { Rulebook } from '../../rulebook/index.js'
import { meaningOf, type Meanings } from '../meanings.js'
import { closedMap, listOf, ref, scalar, strictMap, type JsonSchema } from './json-schema.js'
import { answerSchema, fieldSchema } from './value-schema.js'

/** The properties that a kind may have, and the definitions that they rest on. */
export interface KindProperties {
  readonly properties: Readonly<Record<string, JsonSchema>>
  readonly defs: Readonly<Record<string, JsonSchema>>
}

export interface SchemaSources {
  readonly rulebook: Rulebook
  readonly meanings: Meanings
}

/** Fields, answers and parts of a kind. */
export function kindProperties(kind: KindSpec, { rulebook, meanings }: SchemaSources): KindProperties {
  const { model } = rulebook
  const meaning = (fact: string): string | undefined => meaningOf(model, kind.name, fact, meanings)
  const leaf = (name: string, type: LeafField): KindProperties =>
    wrap(name, fieldSchema(type, `${kind.name}.${name}`, meaning(name)))
  const fields = propertiesOf({ ...fieldsOfEvery(kind.section), ...kind.fields }, '', { leaf, meaning })
  const answers = [...(model.answers.get(kind.name) ?? [])].map(([name, type]) =>
    wrap(name, answerSchema(type, `${kind.name}.${name}`, meaning(name))),
  )
  const parts = Object.entries(kind.parts).map(([name, part]) => partsProperty(name, part, { rulebook, meanings }))
  return merged([...fields, ...answers, ...parts])
}

interface Writing {
  readonly leaf: (name: string, type: LeafField) => KindProperties
  readonly meaning: (fact: string) => string | undefined
}

function propertiesOf(fields: Fields, prefix: string, writing: Writing): readonly KindProperties[] {
  return Object.entries(fields).map(([name, field]) => {
    if (field.type !== 'group') return renamed(name, writing.leaf(`${prefix}${name}`, field))
    const { properties, defs } = merged(propertiesOf(field.fields, `${prefix}${name}.`, writing))
    const description = writing.meaning(`${prefix}${name}`)
    return {
      properties: {
        [name]: {
          anyOf: [strictMap(properties), { const: 'unknown' }],
          ...(description === undefined ? {} : { description }),
        },
      },
      defs,
    }
  })
}

function renamed(name: string, { properties, defs }: KindProperties): KindProperties {
  return { properties: Object.fromEntries(Object.values(properties).map((schema) => [name, schema])), defs }
}

/** Parts are a bare list, or a list with the number there is said to be. */
function partsProperty(name: string, part: KindSpec, sources: SchemaSources): KindProperties {
  const { properties, defs } = kindProperties(part, sources)
  const description = meaningOf(sources.rulebook.model, part.name, '', sources.meanings)
  const item = {
    ...closedMap({ ...namedProperties, id: idSchema, ...properties }, ['id']),
    ...(description === undefined ? {} : { description }),
  }
  const list = listOf(ref(part.name))
  return {
    properties: { [name]: { anyOf: [list, strictMap({ complete: ref('count'), list }), { const: 'unknown' }] } },
    defs: { ...defs, ...countDefs(), [part.name]: item },
  }
}

export function countDefs(): Readonly<Record<string, JsonSchema>> {
  return fieldSchema({ type: 'quantity', quantity: 'count' }, 'count', undefined).defs
}

function wrap(
  name: string,
  { schema, defs }: { readonly schema: JsonSchema; readonly defs: KindProperties['defs'] },
): KindProperties {
  return { properties: { [name]: schema }, defs }
}

export function merged(all: readonly KindProperties[]): KindProperties {
  return {
    properties: Object.fromEntries(all.flatMap(({ properties }) => Object.entries(properties))),
    defs: Object.fromEntries(all.flatMap(({ defs }) => Object.entries(defs))),
  }
}

export const idSchema: JsonSchema = {
  type: 'string',
  pattern: '^[A-Za-z][A-Za-z0-9-]*$',
  description: 'Letters, digits and "-", beginning with a letter.',
}

/** What anything with an id may say of itself. */
export const namedProperties: Readonly<Record<string, JsonSchema>> = {
  name: { ...scalar, description: 'A name for people; ids stay short.' },
  standing: ref('about-standing'),
  evidence: ref('about-evidence'),
}
