import type { Missing } from '../facts/index.js'
import type { JudgedDemand } from '../judging/index.js'
import type { Installation } from '../model/index.js'
import { openLeaves, type Judged } from '../rulebook/index.js'

/** What would decide a demand that is undecided: facts asked by every comparison that is still open. */
export function missingOf(
  { demand, dates, when, require, exempted }: JudgedDemand,
  installation: Installation,
): readonly Missing[] {
  const asked = missingIn([dates, when, exempted?.judged])
  const required = missingIn([require])
  return unique([
    ...asked,
    ...(demand.proof === undefined ? required : required.map((one) => proofFor(one, installation))),
  ])
}

function missingIn(judged: readonly (Judged | undefined)[]): readonly Missing[] {
  const open = judged.filter((one): one is Judged => one !== undefined).flatMap(openLeaves)
  return open.flatMap(({ left, right }) => [...left.missing, ...right.flatMap((one) => one.missing)])
}

/** Where the value is said already, it is the photo of it that is missing. */
function proofFor(missing: Missing, installation: Installation): Missing {
  const said = installation.things.get(missing.subject)?.entries[missing.fact] !== undefined
  return said ? { subject: missing.subject, fact: 'evidence' } : missing
}

export function unique(missing: readonly Missing[]): readonly Missing[] {
  return [...new Map(missing.map((one) => [`${one.subject} ${one.fact}`, one])).values()]
}
