import { readCondition } from './read-condition.js'
import { checkShape } from './check-shape.js'
import { appliesOf, effectiveOf, targetOf, type Change } from './overlay-change.js'
import { checkText } from './placeholders.js'
import { checkBasis, readMeasure, readRequirement } from './read-rule.js'
import type { BasisData, DemandChangeData, OverlayData } from './rule-data.js'
import { demandChangeShape } from './rule-shape.js'

/** `demand`: the authority adds a demand of its own to a rule. */
export function compileDemandChange(raw: unknown, change: Change): undefined {
  const { compiling, steps, data, authority, found } = change
  const written = checkShape(demandChangeShape, raw, steps, compiling.problems)
  const target = written && targetOf(written.demand, [...steps, 'demand'], change)
  if (written === undefined || target === undefined) return undefined
  const { values, rule } = target
  const measure = target.ruleData.measure && readMeasure(target.ruleData.measure, values)
  const when = written.when === undefined ? undefined : readCondition(written.when, [...steps, 'when'], values)
  const require = readRequirement(written, { measure, values, steps })
  const basis = basisOf(written, data)
  checkBasis(basis, written.severity, written.nature, {
    steps,
    sources: compiling.sources,
    problems: compiling.problems,
  })
  if (written.clause === undefined && written.nature !== 'verbal-habit')
    compiling.problems.add('no-citation', steps, 'A demand cites its clause, unless it is a verbal habit.', {
      nearest: 'clause',
    })
  if (written.say !== undefined) checkText(written.say, [...steps, 'say'], values)
  const applies = appliesOf(written.effective, rule.subject, change, values)
  if (require === undefined) return undefined
  found.demands.push({
    rule: rule.id,
    demand: Object.freeze({
      id: `${authority.id}${written.id === undefined ? '' : `/${written.id}`}`,
      severity: written.severity,
      authority,
      nature: written.nature,
      ...(applies === undefined ? {} : { applies }),
      ...(written.effective === undefined ? {} : { effective: effectiveOf(written.effective) }),
      ...(when === undefined ? {} : { when }),
      require,
      exemptions: [],
      locked: false,
      ...(written.proof === undefined ? {} : { proof: written.proof }),
      basis,
      ...(written.say === undefined ? {} : { say: written.say }),
      ...(written.because === undefined ? {} : { because: written.because }),
    }),
  })
}

function basisOf(
  written: Pick<DemandChangeData, 'basis' | 'clause' | 'edition'>,
  data: OverlayData,
): readonly BasisData[] {
  if (written.basis !== undefined) return written.basis
  if (data.basis === undefined) return []
  const { source, ground, known, edition } = data.basis
  const own = written.edition ?? edition
  return [
    {
      source,
      ground,
      known,
      ...(written.clause === undefined ? {} : { clause: written.clause }),
      ...(own === undefined ? {} : { edition: own }),
    },
  ]
}
