import type { ResolvedFact } from '../../facts/index.js'
import { factsOf, type Rule, type Rulebook } from '../../rulebook/index.js'
import { placeOf } from '../examples/index.js'
import { meaningOf, type Meanings } from '../meanings.js'
import { code } from './markdown.js'
import { typeWords } from './type-words.js'

/** A row for each fact that the conditions of a rule ask: its name, its meaning, how it is written. */
export function factRows(rule: Rule, rulebook: Rulebook, meanings: Meanings): readonly (readonly string[])[] {
  const conditions = [rule.when, ...rule.demands.flatMap((demand) => [demand.when, demand.require])].filter(
    (one) => one !== undefined,
  )
  const facts = new Map(conditions.flatMap(factsOf).map((fact) => [fact.path, fact]))
  return [...facts.values()].map((fact) => [
    code(fact.path),
    factMeaning(fact, rule, rulebook, meanings),
    typeWords(fact.type, rulebook.model),
  ])
}

function factMeaning({ path }: ResolvedFact, rule: Rule, rulebook: Rulebook, meanings: Meanings): string {
  const kind = rule.kinds[0] ?? rule.subject
  const place = placeOf(
    rulebook.facts,
    kind,
    path.startsWith(`${rule.subject}.`) ? `${kind}${path.slice(rule.subject.length)}` : path,
  )
  if (place === undefined) return ''
  const derived = rulebook.facts.derived(place.kind, place.fact)
  const meaning = meaningOf(rulebook.model, place.kind, place.fact, meanings) ?? ''
  if (derived === undefined) return meaning
  return `${meaning} *${derived.answerable ? 'Found from the drawing, or stated.' : 'Found from the rest of the document.'}*`
}
