import { equipmentSchema } from './equipment-schema.js'
import { overlaySchema, ruleSchema } from './file-schemas.js'
import { installationSchema } from './installation-schema.js'
import type { JsonSchema } from './json-schema.js'
import type { SchemaSources } from './kind-schema.js'

export type { JsonSchema }

/** JSON Schemas, draft 2020-12, by the kind of file they describe: installation, equipment, rule, overlay. */
export function jsonSchemas(
  sources: SchemaSources,
): Readonly<Record<'installation' | 'equipment' | 'rule' | 'overlay', JsonSchema>> {
  const subjects = [...sources.rulebook.model.kindsIn.keys()]
  return {
    installation: installationSchema(sources),
    equipment: equipmentSchema(sources),
    rule: ruleSchema(subjects),
    overlay: overlaySchema(subjects),
  }
}
