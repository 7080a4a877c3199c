import { describe, expect, it } from 'vitest'
import { checkInstallation } from '../../src/check-installation.js'
import { applyEdits, type Edit } from '../../src/model/index.js'
import { openEquipment, openSeed, openTowns } from '../houses/open-house.js'
import { faults, firedRules } from './all-faults.js'

const rulebook = openTowns('harrowmere')
const equipment = openEquipment()
const house = openSeed('larkspur-lane')

function told(edits: readonly Edit[]): readonly string[] {
  const edited = applyEdits(house, edits, rulebook.model)
  if (!edited.ok) throw new Error(edited.problems.map((problem) => problem.message).join(' '))
  const report = checkInstallation({ ...edited.document, installation: 1 }, rulebook, {
    equipment,
    judgedOn: '2025-11-01',
  })
  expect(report.contradictions).toEqual([])
  return report.findings.map(({ severity, verdict, key }) => `${severity} ${verdict} ${key}`)
}

describe('faults planted alone in the clean house', () => {
  it.each(faults)('%s', (_name, edits, expected) => {
    const before = told([])
    expect(
      told(edits)
        .filter((line) => !before.includes(line))
        .sort(),
    ).toEqual([...expected].sort())
  })

  it('between them fire every rule that the package ships', () => {
    const shipped = rulebook.rules.filter((rule) => rule.demands.length > 0).map((rule) => rule.id)
    // The clean house itself has a burner that cannot turn down to its smallest zone.
    expect(shipped.filter((id) => !firedRules.has(id))).toEqual(['boiler/turndown'])
    expect(told([])).toContain('advice fail boiler/turndown/B1')
  })
})
