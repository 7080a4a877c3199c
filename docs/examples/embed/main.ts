// A form in thirty lines: each answer is an edit, and after each the list of what to find out next is new.
import { applyEdits, checkInstallation, openRulebook, type InstallationWritten, type Report } from 'hydronic-rulebook'
import { base } from 'hydronic-rulebook/base'

const rulebook = openRulebook({ ruleSets: [base] })

const begun: InstallationWritten = {
  installation: 1,
  name: 'Quarry Cottage',
  jurisdiction: { authorities: [] },
  complete: { boiler: '1', reliefValve: '1' },
  components: [
    { id: 'B1', kind: 'boiler', fuel: 'natural-gas', mawp: '30 psi', output: '84000 Btu/h' },
    { id: 'RV1', kind: 'reliefValve', type: 'pressure', protects: 'B1' },
  ],
}

/** One answer of the form, as text. A wrong one changes nothing and says what to write. */
function answer(house: InstallationWritten, address: string, text: string): InstallationWritten {
  const edited = applyEdits(house, [{ set: address, to: text }], rulebook.model)
  if (!edited.ok) throw new Error(edited.problems.map((problem) => problem.message).join(' '))
  return { ...house, ...edited.document }
}

function tell({ headline, findings }: Report): void {
  const wrong = findings.filter((finding) => finding.verdict === 'fail')
  console.log([headline, ...wrong.map(({ severity, message }) => `  ${severity}: ${message}`)].join('\n'))
}

tell(checkInstallation(begun, rulebook))
tell(checkInstallation(answer(begun, 'RV1.setPressure', '50 psi'), rulebook))
