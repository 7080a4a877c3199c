import { defineCatalogue, type Catalogue } from '../facts/index.js'
import { defineModel } from '../model/index.js'
import type { Plugin } from '../rulebook/index.js'

/** All facts that rules over this content may mention, whether or not the rules themselves hold. */
export function catalogueOf(content: readonly Plugin[]): Catalogue {
  const handles = content.flatMap((plugin) => [...plugin.facts, ...plugin.checks])
  const answers = handles.filter((handle) => handle.answerable).map(({ of, name, type }) => ({ of, name, field: type }))
  return defineCatalogue(
    defineModel(
      content.flatMap((plugin) => plugin.kinds),
      answers,
    ),
    handles,
  )
}
