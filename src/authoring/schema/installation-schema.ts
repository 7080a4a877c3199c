import { media, phases, type KindSpec, type Section } from '../../model/index.js'
import { meaningOf } from '../meanings.js'
import { frameProperties } from './frame-schema.js'
import { branches, closedMap, dialect, listOf, ref, scalar, type JsonSchema } from './json-schema.js'
import { countDefs, idSchema, kindProperties, merged, namedProperties, type SchemaSources } from './kind-schema.js'
import { aboutDefs } from './value-schema.js'

/** The schema of installation documents: one branch for each kind, so that an editor completes and checks while somebody writes. */
export function installationSchema(sources: SchemaSources): JsonSchema {
  const kinds = [...sources.rulebook.model.kinds.values()]
  const made = kinds.filter((kind) => kind.section !== 'parts').map((kind) => thingSchema(kind, sources))
  const { properties, defs } = merged(
    made.map(({ name, schema, defs: own }) => ({ properties: { [name]: schema }, defs: own })),
  )
  const components = kinds.filter((kind) => kind.section === 'components').map((kind) => kind.name)
  const sections = kinds.filter((kind) => !['components', 'parts', 'singleton'].includes(kind.section))
  const singletons = kinds.filter((kind) => kind.section === 'singleton' && Object.keys(kind.fields).length > 0)
  return {
    $schema: dialect,
    title: 'Heating installation',
    description: 'What is known of one heating installation. What is left out is a question, never a pass.',
    ...closedMap(
      {
        ...frameProperties(sources.rulebook.model, phases),
        ...Object.fromEntries(singletons.map((kind) => [kind.name, ref(kind.name)])),
        components: listOf(ref('component')),
        ...Object.fromEntries(sections.map((kind) => [kind.section, listOf(ref(kind.name))])),
        removed: { ...listOf(ref('component')), description: 'Things taken out by this job: described, not counted.' },
      },
      ['installation'],
    ),
    $defs: { ...aboutDefs, ...countDefs(), ...defs, ...properties, component: componentSchema(components) },
  }
}

function componentSchema(kinds: readonly string[]): JsonSchema {
  return {
    type: 'object',
    required: ['id', 'kind'],
    properties: { kind: { enum: kinds, description: 'What it is.' } },
    allOf: branches('kind', Object.fromEntries(kinds.map((kind) => [kind, ref(kind)]))),
  }
}

function thingSchema(
  kind: KindSpec,
  sources: SchemaSources,
): { readonly name: string; readonly schema: JsonSchema; readonly defs: Readonly<Record<string, JsonSchema>> } {
  const { properties, defs } = kindProperties(kind, sources)
  const { own, required } = ownProperties(kind.section, kind.name)
  const description = meaningOf(sources.rulebook.model, kind.name, '', sources.meanings)
  return {
    name: kind.name,
    schema: {
      ...(description === undefined ? {} : { description }),
      ...closedMap({ ...own, ...properties }, required),
    },
    defs,
  }
}

const ids: JsonSchema = {
  anyOf: [idSchema, listOf(idSchema)],
  description: 'Its id, or several ids for several alike.',
}

function ownProperties(
  section: Section,
  kind: string,
): { readonly own: Readonly<Record<string, JsonSchema>>; readonly required: readonly string[] } {
  switch (section) {
    case 'singleton':
      return { own: {}, required: [] }
    case 'states':
      return {
        own: { ...namedProperties, name: { ...scalar, description: 'A state is known by its name.' } },
        required: ['name'],
      }
    case 'components':
      return { own: { id: ids, kind: { const: kind }, ...namedProperties }, required: ['id', 'kind'] }
    case 'lines':
      return { own: { id: ids, ...namedProperties, ...lineProperties }, required: ['id', 'medium', 'path'] }
    case 'zones':
    case 'spaces':
    case 'fixtures':
    case 'readings':
    case 'tests':
    case 'evidence':
    case 'parts':
      return { own: { id: ids, ...namedProperties }, required: ['id'] }
    default:
      return neverSection(section)
  }
}

const lineProperties: Readonly<Record<string, JsonSchema>> = {
  medium: { enum: media, description: 'What runs through it.' },
  path: {
    ...listOf({ type: 'string' }),
    minItems: 2,
    description:
      'Ports at its ends, bare ids or ways between: [B1.supply, ISO1, HS.main]; unknown where nobody saw what is there.',
  },
}

function neverSection(section: never): never {
  throw new TypeError(`no such section: ${String(section)}`)
}
