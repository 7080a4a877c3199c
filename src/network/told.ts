/** A fact that would decide a question if it were known. */
export interface MissingFact {
  /** Id of the component or line; for things that may be there unlisted, the kind. */
  readonly subject: string
  /** Name of the port that leads nobody knows where, `path` of a line, the field of a component, or `count` of a kind. */
  readonly fact: string
}

/** Yes, no, or the fact that would tell. */
export type Told = boolean | MissingFact

/** Whether one of two holds. A yes is enough; of two open questions the first is asked. */
export function eitherTold(one: Told, other: Told): Told {
  if (one === true || other === true) return true
  return one === false ? other : one
}

/** The same facts in the same order, each only once. */
export function uniqueFacts(facts: readonly MissingFact[]): readonly MissingFact[] {
  return [...new Map(facts.map((fact) => [JSON.stringify([fact.subject, fact.fact]), fact])).values()]
}
