import { nearestIn, type ProblemList, type Steps } from '../model/index.js'
import { readCondition } from './read-condition.js'
import { checkShape } from './check-shape.js'
import { appliesOf, targetOf, type Change, type Target } from './overlay-change.js'
import type { ExemptChangeData } from './rule-data.js'
import { exemptChangeShape } from './rule-shape.js'
import type { Authority } from './rule.js'

/** `exempt`: the authority lets demands go, with a citation. */
export function compileExempt(raw: unknown, change: Change): undefined {
  const { compiling, steps, authority, found } = change
  const { problems, warnings } = compiling
  const written = checkShape<ExemptChangeData>(exemptChangeShape, raw, steps, problems)
  const target = written && targetOf(written.exempt, [...steps, 'exempt'], change)
  if (written === undefined || target === undefined) return undefined
  const { clause } = written
  if (clause === undefined)
    return problems.add('no-citation', steps, 'Taking a demand away needs a citation.', { nearest: 'clause' })
  for (const [index, id] of (written.of ?? []).entries())
    checkExempted(id, { target, steps: [...steps, 'of', index], problems, authority })
  if (written.of === undefined && target.rule.demands.every((demand) => demand.locked))
    warnings.add('never-applies', steps, `Every demand of ${target.rule.id} is locked; this exemption never applies.`)
  const when = written.when === undefined ? undefined : readCondition(written.when, [...steps, 'when'], target.values)
  const applies = appliesOf(written.effective, target.rule.subject, change, target.values)
  const exemption = {
    authority,
    clause,
    ...(when === undefined ? {} : { when }),
    ...(applies === undefined ? {} : { applies }),
    ...(written.because === undefined ? {} : { because: written.because }),
  }
  found.exemptions.push({
    rule: target.rule.id,
    ...(written.of === undefined ? {} : { of: written.of }),
    exemption: Object.freeze(exemption),
  })
}

function checkExempted(
  id: string,
  { target, steps, problems, authority }: { target: Target; steps: Steps; problems: ProblemList; authority: Authority },
): undefined {
  const demand = target.rule.demands.find((one) => one.id === id)
  if (demand?.locked === true)
    return problems.add('locked-demand', steps, `The demand "${id}" is locked; nobody can exempt from it.`)
  if (demand !== undefined || id.split('/')[0] === authority.id) return undefined
  return problems.add(
    'unknown-demand',
    steps,
    `${target.rule.id} has no demand "${id}".`,
    nearestIn(
      id,
      target.rule.demands.map((one) => one.id),
    ),
  )
}
