import { typeOf } from '../facts/index.js'
import type { MissingFact, Report } from '../findings/index.js'
import type { Installation, KindSpec, Place } from '../model/index.js'
import type { Rulebook, Severity } from '../rulebook/index.js'
import { askFor } from './ask-for.js'
import { isCount } from './missing-section.js'

/** One thing to find out: a value of a thing, or how many there are of a kind. */
export interface Question {
  /** 1 for what is most worth knowing. */
  readonly rank: number
  readonly asks: 'value' | 'count'
  readonly subject: string
  readonly fact: string
  readonly place: Place
  readonly worst: Severity
  /** How many verdicts it could settle or help to settle. */
  readonly decides: number
  /** The rules that wait for it. */
  readonly rules: readonly string[]
  /** What an answer looks like. */
  readonly answer?: string
}

/** The missing facts of a report as questions in rank order, each with the place where it is looked up. */
export function questionsOf(
  report: Pick<Report, 'missing'>,
  rulebook: Rulebook,
  installation: Installation,
): readonly Question[] {
  return report.missing.map((missing, index) => {
    const kind = installation.things.get(missing.subject)?.kind ?? rulebook.model.kinds.get(missing.subject)
    const answer = kind === undefined || isCount(missing) ? undefined : answerFor(missing.fact, kind, rulebook)
    return {
      rank: index + 1,
      asks: isCount(missing) ? 'count' : 'value',
      subject: missing.subject,
      fact: missing.fact,
      place: kind?.place ?? placeOfRule(missing, rulebook),
      worst: missing.worst,
      decides: missing.decides,
      rules: missing.rules,
      ...(answer === undefined ? {} : { answer }),
    }
  })
}

function answerFor(fact: string, kind: KindSpec, rulebook: Rulebook): string | undefined {
  const type = typeOf(rulebook.facts, kind.name, fact)
  if (type !== undefined) return askFor(type)
  if (fact === 'evidence') return 'a photo or a paper that shows it'
  if (fact === 'path') return 'the way it runs, from port to port'
  if (fact === 'direction') return 'which way its water runs: what is drawn says both, so something is drawn backwards'
  return Object.hasOwn(kind.ports, fact) ? 'a line from this port, or that it is capped' : undefined
}

/** A thing that is only named is looked for where the rules that wait for it look. */
function placeOfRule({ rules }: MissingFact, rulebook: Rulebook): Place {
  return rulebook.rulesById.get(rules[0] ?? '')?.place ?? lastPlace
}

const lastPlace: Place = 'papers'
