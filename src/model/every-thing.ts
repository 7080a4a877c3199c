import { choice, listOf, quantity, reference, text, type Fields } from './field.js'
import type { Section } from './kind.js'

/** Fields that components have beside those of their kind. */
export const everyComponent = {
  /** Whether it is put in by this job or stays from before. The `kept` list of the document says it for many at once. */
  work: choice({ new: 'new work', kept: 'kept work' }),
  /** Date it was put in. */
  installedOn: quantity('date'),
  /** The space in which it stands. */
  space: reference('space'),
  /** The equipment file that describes its model. */
  use: text,
  /** Ports that are plugged, so that nothing is connected there. */
  capped: listOf(text),
} satisfies Fields

/** Fields that lines have beside their own. */
export const everyLine = {
  /** Whether it is put in by this job or stays from before. */
  work: choice({ new: 'new work', kept: 'kept work' }),
} satisfies Fields

/** The fields shared by all things of a section. */
export function fieldsOfEvery(section: Section): Fields {
  if (section === 'components') return everyComponent
  return section === 'lines' ? everyLine : {}
}
