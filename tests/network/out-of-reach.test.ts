import { describe, expect, it } from 'vitest'
import { checkInstallation } from '../../src/check-installation.js'
import type { Report } from '../../src/findings/index.js'
import { applyEdits, isMap, tryReadInstallation, type Edit } from '../../src/model/index.js'
import { openEquipment, openSeed, openTowns } from '../houses/open-house.js'
import { networkOf, part, run, type Run } from './build.js'
import { reliefFrom } from './questions.js'

const loose = (capped: readonly string[], runs: readonly Run[] = []) =>
  networkOf({
    parts: [
      part('B1', 'boiler', { capped: ['supply', 'return', 'condensate', ...capped] }),
      part('RV1', 'relief'),
      part('T1', 'tee'),
    ],
    runs,
  })

describe('a component that no line comes to', () => {
  it('leaves the answer open at the port where a line may be left out', () => {
    expect(reliefFrom(loose([]))).toMatchObject({ truth: 0, missing: [{ subject: 'B1', fact: 'relief' }] })
    expect(reliefFrom(loose([], [run('L1', 'B1.relief T1.a')]))).toMatchObject({
      truth: 0,
      missing: [
        { subject: 'T1', fact: 'b' },
        { subject: 'T1', fact: 'branch' },
      ],
    })
  })

  it('is surely not reached where every port is capped', () => {
    expect(reliefFrom(loose(['relief']))).toMatchObject({ truth: -1, missing: [] })
  })
})

const rulebook = openTowns('harrowmere')

function changed(edits: readonly Edit[]): Readonly<Record<string, unknown>> {
  const edited = applyEdits(openSeed('larkspur-lane'), edits, rulebook.model)
  if (!edited.ok) throw new Error(edited.problems.map(({ message }) => message).join(' '))
  return isMap(edited.document) ? edited.document : {}
}

function check(edits: readonly Edit[]): Report {
  return checkInstallation({ ...changed(edits), installation: 1 }, rulebook, { equipment: openEquipment() })
}

describe('in the clean house', () => {
  it('a relief valve that no line comes to is a question at stop, never a pass', () => {
    const finding = check([{ remove: 'L-relief' }]).findings.find(({ key }) => key === 'relief/way/B1')
    expect(finding).toMatchObject({ verdict: 'undecided', severity: 'stop' })
    expect(finding?.missing).toContainEqual({ subject: 'B1', fact: 'relief' })
  })

  it('a radiator that no line comes to leaves the flow of the zones open', () => {
    const report = check([{ remove: 'L-e4-in' }, { remove: 'L-e4-out' }])
    expect(report.outcome).toBe('open')
    expect(report.findings.filter(({ verdict, severity }) => verdict === 'fail' && severity !== 'advice')).toEqual([])
  })

  it('a height that cannot be is told in reading, with its place', () => {
    const read = tryReadInstallation(changed([{ set: 'E10.topElevation', to: '-5 ft' }]), rulebook.model)
    expect(read.ok ? [] : read.problems).toMatchObject([
      { code: 'unreadable-quantity', message: '"-5 ft" cannot be: a length is never negative' },
    ])
  })

  it('the highest top decides what the fill has to reach', () => {
    const fails = (top: string): boolean =>
      check([{ set: 'E10.topElevation', to: top }]).findings.some(
        ({ key, verdict }) => key === 'fill/pressure-for-height/FV1' && verdict === 'fail',
      )
    expect([fails('25.5 ft'), fails('40 ft')]).toEqual([false, true])
  })
})
