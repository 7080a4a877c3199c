import { branches, closedMap, dialect, ref, scalar, strictMap, type JsonSchema } from './json-schema.js'
import { kindProperties, merged, namedProperties, type SchemaSources } from './kind-schema.js'
import { meaningOf } from '../meanings.js'
import { aboutDefs } from './value-schema.js'

/** The schema of equipment files: a maker's data for one model, with the fields of its kind. */
export function equipmentSchema(sources: SchemaSources): JsonSchema {
  const kinds = [...sources.rulebook.model.kinds.values()].filter((kind) => kind.section === 'components')
  const made = kinds.map((kind) => {
    const { properties, defs } = kindProperties(kind, sources)
    const description = meaningOf(sources.rulebook.model, kind.name, '', sources.meanings)
    return {
      properties: {
        [kind.name]: {
          ...(description === undefined ? {} : { description }),
          ...closedMap({ ...frame, kind: { const: kind.name }, ...namedProperties, ...properties }),
        },
      },
      defs,
    }
  })
  const { properties, defs } = merged(made)
  const names = kinds.map((kind) => kind.name)
  return {
    $schema: dialect,
    title: 'Equipment',
    description: "A maker's data for one model, taken over by a component with `use:`.",
    type: 'object',
    required: ['equipment', 'kind', 'manual'],
    properties: { ...frame, kind: { enum: names, description: 'What it is.' } },
    allOf: branches('kind', Object.fromEntries(names.map((name) => [name, ref(name)]))),
    $defs: { ...aboutDefs, ...defs, ...properties },
  }
}

const frame: Readonly<Record<string, JsonSchema>> = {
  equipment: { type: 'string', description: 'The name that `use:` gives: equipment/b75.' },
  manual: {
    ...strictMap({ title: { ...scalar }, edition: { ...scalar }, page: { ...scalar } }, ['title']),
    description: 'The manual that the figures come from.',
  },
}
