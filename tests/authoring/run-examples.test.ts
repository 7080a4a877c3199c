import { describe, expect, it } from 'vitest'
import { runExamples } from '../../src/authoring/index.js'
import { rulebookOf } from '../rules/base-rules.js'
import { fileOf } from './files.js'

const rule = `title: A relief valve opens low enough
subject: reliefValve
when: { reliefValve.type: pressure }
measure: { fact: reliefValve.setPressure, operator: atMost }
demands:
  - { id: high, severity: should, value: 30 psi, basis: [{ source: imc, clause: '1', ground: code, known: read }] }
  - { id: plate, severity: must, value: 50 psi, proof: photo, basis: [{ source: imc, clause: '1', ground: code, known: read }] }
say: { fail: "{id} opens too late." }
because: It has to open first.
given: { reliefValve.type: pressure }
examples:
`

const examples: readonly (readonly [string, string, boolean])[] = [
  [
    'a fail beside a worse demand that no photo shows',
    '{ name: a, facts: { reliefValve.setPressure: 60 psi }, expect: { fail: should, couldBe: must } }',
    true,
  ],
  [
    'the same without what it could be',
    '{ name: a, facts: { reliefValve.setPressure: 60 psi }, expect: { fail: should } }',
    false,
  ],
  [
    'a photo that shows it',
    '{ name: a, facts: { reliefValve.setPressure: { value: 60 psi, evidence: [P1] } }, expect: { fail: must } }',
    true,
  ],
  [
    'an assumption, good enough for should only',
    '{ name: a, facts: { reliefValve.setPressure: { value: 20 psi, standing: assumed, evidence: [P1] } }, expect: undecided }',
    true,
  ],
  [
    'a range that crosses the limit',
    '{ name: a, facts: { reliefValve.setPressure: { value: 30 psi, within: 5 psi, evidence: [P1] } }, expect: undecided }',
    true,
  ],
  [
    'another kind of valve',
    '{ name: a, facts: { reliefValve.type: temperature-and-pressure }, expect: not-applicable }',
    true,
  ],
  ['an installation as it stands', '{ of: fragments/two-valves, subject: RV2, expect: pass }', true],
  [
    'an installation with an edit',
    '{ of: fragments/two-valves, edits: [{ set: RV1.setPressure, to: { value: 55 psi, evidence: [P1] } }], expect: { fail: must } }',
    true,
  ],
  ['the worst of all that are listed', '{ of: fragments/two-valves, expect: { fail: should } }', true],
  ['a value forgotten', '{ of: fragments/two-valves, edits: [{ forget: RV1.setPressure }], expect: undecided }', true],
  [
    'an edit on nobody',
    '{ of: fragments/two-valves, edits: [{ set: RV9.setPressure, to: 55 psi }], expect: pass }',
    false,
  ],
  ['no such installation', '{ of: fragments/three-valves, expect: pass }', false],
]

const twoValves = {
  installation: '1',
  complete: { reliefValve: '2' },
  components: [
    { id: 'RV1', kind: 'reliefValve', type: 'pressure', setPressure: { value: '35 psi', evidence: ['P1'] } },
    { id: 'RV2', kind: 'reliefValve', type: 'pressure', setPressure: { value: '30 psi', evidence: ['P1'] } },
  ],
  evidence: [{ id: 'P1', type: 'photo' }],
}

describe('the example runner', () => {
  it.each(examples)('%s', (_, example, agrees) => {
    const { data } = fileOf('rules/relief/low.yaml', `${rule}  - ${example}\n`)
    const rulebook = rulebookOf([{ id: 'relief/low', data }])
    const runs = runExamples({ id: 'relief/low', data }, rulebook, { 'fragments/two-valves': twoValves })
    expect(runs.map((run) => [run.agrees, run.message])).toEqual([[agrees, expect.any(String) as unknown]])
  })

  it('tells what came instead', () => {
    const { data } = fileOf(
      'rules/relief/low.yaml',
      `${rule}  - { name: late, facts: { reliefValve.setPressure: 60 psi }, expect: pass }\n`,
    )
    const [run] = runExamples({ id: 'relief/low', data }, rulebookOf([{ id: 'relief/low', data }]))
    expect(run?.message).toBe('relief/low, "late": expected pass, came to fail: should, could be must')
  })

  it('knows references, owners and singletons', () => {
    const { data } = fileOf(
      'rules/vent/window.yaml',
      `title: A window stays away
subject: opening
demands:
  - { id: away, severity: should, when: { opening.ventTermination.serves: exhaust }, require: { opening.distance: { atLeast: { sum: [12 in, { fact: site.snowLine }] } } },
      basis: [{ source: practice, ground: practice, known: recalled }] }
say: { fail: "{id} is near." }
because: Flue gas comes in.
given: { opening.ventTermination.serves: exhaust, site.snowLine: 6 in }
examples:
  - { name: far, facts: { opening.distance: 18 in }, expect: pass }
  - { name: near, facts: { opening.distance: 17 in }, expect: { fail: should } }
  - { name: intake, facts: { opening.ventTermination.serves: intake }, expect: not-applicable }
  - { name: no snow line, facts: { opening.distance: 18 in, site.snowLine: unknown }, expect: undecided }
`,
    )
    const runs = runExamples({ id: 'vent/window', data }, rulebookOf([{ id: 'vent/window', data }]))
    expect(runs.map((run) => run.agrees)).toEqual([true, true, true, true])
  })
})
