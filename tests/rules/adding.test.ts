import { describe, expect, it } from 'vitest'
import { checkInstallation } from '../../src/check-installation.js'
import type { InstallationWritten } from '../../src/model/index.js'
import type { NamedData } from '../../src/rulebook/index.js'
import { lintRuleSet, ruleIdOf } from '../../src/authoring/index.js'
import { fileOf } from '../authoring/files.js'
import { foundation, rulebookOf, written, writtenRules } from './base-rules.js'

const house: InstallationWritten = {
  installation: 1,
  jurisdiction: { authorities: ['quillmere'] },
  complete: { ventTermination: 1, boiler: 0 },
  components: [{ id: 'VT1', kind: 'ventTermination', serves: 'exhaust', heightAboveGrade: '20 in' }],
}

describe('adding a rule', () => {
  const file = fileOf(
    'rules/vent/clear-of-shrubs.yaml',
    `title: A vent termination stands above the shrubs
subject: ventTermination
from: design
demands:
  - { id: shrubs, severity: should, require: { ventTermination.heightAboveGrade: { atLeast: 24 in } },
      basis: [{ source: practice, ground: practice, known: recalled }] }
say: { fail: "{id} stands {ventTermination.heightAboveGrade} above grade, among the shrubs." }
because: Leaves hold the flue gas back.
examples:
  - { name: above, facts: { ventTermination.heightAboveGrade: 24 in }, expect: pass }
  - { name: among, facts: { ventTermination.heightAboveGrade: 23 in }, expect: { fail: should } }
  - { name: not measured, facts: {}, expect: undecided }
`,
  )

  it('is one new file', () => {
    expect(lintRuleSet({ ...written, rules: [...written.rules, file], plugins: [foundation] })).toEqual([])
    const added = { id: ruleIdOf(file.file) ?? '', data: file.data }
    const before = checkInstallation(house, rulebookOf(writtenRules)).findings.map(({ key }) => key)
    const after = checkInstallation(house, rulebookOf([...writtenRules, added])).findings.filter(
      ({ key }) => !before.includes(key),
    )
    expect(after.map(({ rule, severity, message }) => [rule, severity, message])).toEqual([
      ['vent/clear-of-shrubs', 'should', 'VT1 stands 20 in above grade, among the shrubs.'],
    ])
  })
})

describe("a town's number", () => {
  const town = (height: string): NamedData =>
    fileOf(
      'shared/overlays/quillmere.yaml',
      `overlay: quillmere
authority: { name: Town of Quillmere, layer: town }
written: { by: the office, official: true }
basis: { source: ifgc, ground: code, known: read }
changes:
  - { demand: vent/termination-height, severity: must, value: ${height}, nature: amendment, clause: 1-1 }
`,
    )

  it.each([
    ['19 in', 'undecided'],
    ['21 in', 'must'],
  ])('is one line: %s', (height, expected) => {
    const { findings } = checkInstallation(house, rulebookOf(writtenRules, [town(height)]))
    const found = findings.find(({ rule }) => rule === 'vent/termination-height')
    expect(found?.verdict === 'fail' ? found.severity : found?.verdict).toBe(expected)
  })
})
