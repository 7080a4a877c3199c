import { describe, expect, it } from 'vitest'
import { checkInstallation } from '../../src/check-installation.js'
import { applyEdits } from '../../src/model/index.js'
import { factsOf, type Rule } from '../../src/rulebook/index.js'
import { openEquipment, openSeed, openTowns } from '../houses/open-house.js'
import { firedRules } from './all-faults.js'
import { orderQuestions } from './order-questions.js'

const rulebook = openTowns('harrowmere', 'saltmarrow')
const { rulesById, model, facts } = rulebook

/** Only towns ask for it. */
const inTowns = 'safety/emergency-switch'
/** Amounts and counts: there the plain answers are what they are worked out from, or that there is none. */
const amounts = ['Q33', 'Q35', 'Q38', 'Q40']

/** Whether a person can say it: a field, or a check that takes an answer. */
function isAnswerable({ subject }: Rule, path: string): boolean {
  const [first = '', ...rest] = path.split('.')
  const kinds = first === subject ? (model.kindsIn.get(subject) ?? []) : [first]
  return kinds.every((kind) => facts.derived(kind, rest.join('.'))?.answerable !== false)
}

describe('the forty questions about order', () => {
  it('are all there, each once', () => {
    const numbers = Array.from({ length: 40 }, (_each, index) => `Q${index + 1}`)
    expect(orderQuestions.map(([question]) => question)).toEqual(numbers)
  })

  it.each(orderQuestions)('%s: %s - is asked by rules that fire on a planted fault', (_question, _asked, rules) => {
    expect(rules.filter((rule) => !rulesById.has(rule))).toEqual([])
    expect(rules.filter((rule) => rule !== inTowns && !firedRules.has(rule))).toEqual([])
  })

  it('Q40 fires where a town asks for the switch', () => {
    const moved = applyEdits(
      openSeed('larkspur-lane'),
      [{ set: 'jurisdiction.authorities', to: ['saltmarrow'] }],
      model,
    )
    if (!moved.ok) throw new Error('the house cannot be moved')
    const report = checkInstallation({ ...moved.document, installation: 1 }, rulebook, { equipment: openEquipment() })
    expect(report.findings.filter(({ verdict }) => verdict === 'fail').map(({ rule }) => rule)).toContain(inTowns)
  })

  it.each(orderQuestions.filter(([question]) => !amounts.includes(question)))(
    '%s: %s - can be answered by a person who draws nothing',
    (_question, _asked, ids) => {
      const rules = ids.flatMap((id) => rulesById.get(id) ?? [])
      const asked = rules.flatMap((rule) =>
        rule.demands.flatMap(({ require }) => factsOf(require).map(({ path }) => isAnswerable(rule, path))),
      )
      expect(asked).toContain(true)
    },
  )
})
