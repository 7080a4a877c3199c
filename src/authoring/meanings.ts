import type { Model } from '../model/index.js'
import collected from './meanings.generated.json' with { type: 'json' }

/** What facts mean, in the words of their doc comments: by kind, then by fact; under the empty name the kind itself. */
export type Meanings = Readonly<Record<string, Readonly<Record<string, string>>>>

/** Meanings of everything that the package itself declares. */
export const builtInMeanings: Meanings = collected

/**
 * What a fact of a kind means, or with an empty name the kind itself. Fields of families and those that all components share
 * are found; parts and counts of things that refer to it are put into words.
 *
 * @example
 * meaningOf(rulebook.model, 'reliefValve', 'setPressure') // 'Pressure at which it opens, from its tag; psi, ...'
 */
export function meaningOf(
  model: Model,
  kind: string,
  fact: string,
  meanings: Meanings = builtInMeanings,
): string | undefined {
  const spec = model.kinds.get(kind)
  const places = [
    kind,
    ...(spec?.families.map((family) => family.name) ?? []),
    ...(fact === '' || spec === undefined ? [] : [spec.section]),
  ]
  const told = places.map((place) => ownText(meanings, place, fact)).find((text) => text !== undefined)
  return told ?? partsMeaning(model, kind, fact) ?? countMeaning(model, kind, fact)
}

function ownText(meanings: Meanings, place: string, fact: string): string | undefined {
  const facts = Object.hasOwn(meanings, place) ? meanings[place] : undefined
  return facts !== undefined && Object.hasOwn(facts, fact) ? facts[fact] : undefined
}

function partsMeaning(model: Model, kind: string, fact: string): string | undefined {
  const parts = model.kinds.get(kind)?.parts ?? {}
  return Object.hasOwn(parts, fact) ? `How many parts of the kind ${parts[fact]?.spoken ?? ''} it has.` : undefined
}

function countMeaning(model: Model, kind: string, fact: string): string | undefined {
  const counted = (model.inverse.get(kind) ?? []).filter((inverse) => inverse.countedAs === fact)
  if (counted.length === 0) return undefined
  const referring = counted.map(
    (inverse) => `${model.kinds.get(inverse.kind)?.spoken ?? inverse.kind} (by its \`${inverse.field}\`)`,
  )
  return `How many things refer to it, each a ${referring.join(' or ')}.`
}
