import { describe, expect, it } from 'vitest'
import { checkInstallation } from '../../src/check-installation.js'
import { applyEdits, isMap, readInstallation } from '../../src/model/index.js'
import { questionsOf } from '../../src/printing/questions.js'
import { downstreamOf, firstMet, upstreamOf } from '../../src/network/index.js'
import { openEquipment, openSeed, openTowns } from '../houses/open-house.js'
import { networkOf, part, run, type Run } from './build.js'
import { isKind } from './questions.js'

const parts = [
  part('B1', 'boiler', { capped: ['relief', 'condensate'] }),
  part('K1', 'coupling'),
  part('K2', 'coupling'),
  part('P1', 'pump'),
  part('P2', 'pump'),
]
const from = { component: 'B1', port: 'supply' }
const network = (...runs: readonly Run[]) => networkOf({ parts, runs })
const asked = (...runs: readonly Run[]) => [
  downstreamOf(network(...runs), from),
  upstreamOf(network(...runs), { component: 'B1', port: 'return' }),
  firstMet(network(...runs), from, 'downstream', { isTarget: isKind('pump') }),
]

describe('water that is drawn to run both ways', () => {
  it('names the line that runs against itself, and nothing is sure behind it', () => {
    const answers = asked(run('L1', 'B1.supply K1 P1.out-in K2.a'), run('L2', 'K2.b P2 B1.return'))
    for (const { missing } of answers) expect(missing).toEqual([{ subject: 'L1', fact: 'direction' }])
    expect(answers[0]?.sure).toEqual([])
    expect(answers[2]?.possible).not.toEqual([])
  })

  it('names one of two lines that agree with themselves and meet head on', () => {
    const runs = [run('L1', 'B1.supply P1 K1.a'), run('L2', 'B1.return K2 P2.out-in K1.b')]
    expect(asked(...runs).every(({ missing }) => missing.length === 0)).toBe(true)
    const meeting = [run('L1', 'B1.supply P1 K1.a'), run('L2', 'B1.return K2 P2 K1.b')]
    for (const { missing } of asked(...meeting)) expect(missing.map(({ fact }) => fact)).toEqual(['direction'])
  })

  it('says nothing of a line that is only listed from its other end', () => {
    for (const { missing } of asked(run('L1', 'K2.a P1.out-in K1 B1.supply'), run('L2', 'B1.return P2.out-in K2.b')))
      expect(missing).toEqual([])
  })

  it('asks for the direction of the line in words', () => {
    const rulebook = openTowns('harrowmere')
    const path = ['B1.supply', 'TE1', 'ISO1', 'AS1', 'ISO4', 'C1.out-in', 'ISO5', 'HS.main']
    const edited = applyEdits(openSeed('larkspur-lane'), [{ set: 'L-supply.path', to: path }], rulebook.model)
    const document = { ...(edited.ok && isMap(edited.document) ? edited.document : {}), installation: 1 as const }
    const report = checkInstallation(document, rulebook, { equipment: openEquipment() })
    expect(report.findings.find(({ rule }) => rule === 'expansion/pump-away')).toMatchObject({
      verdict: 'undecided',
      missing: [
        { subject: 'L-supply', fact: 'direction' },
        { subject: 'EX1', fact: 'pumpOrder' },
      ],
    })
    const questions = questionsOf(report, rulebook, readInstallation(document, rulebook.model))
    expect(questions.find(({ subject }) => subject === 'L-supply')?.answer).toBe(
      'which way its water runs: what is drawn says both, so something is drawn backwards',
    )
  })
})
