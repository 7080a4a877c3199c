import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkInstallation } from '../../src/check-installation.js'
import { inOrder } from '../../src/findings/order.js'
import type { Finding } from '../../src/findings/index.js'
import { isMap, places } from '../../src/model/index.js'
import { severities } from '../../src/rulebook/index.js'
import { openEquipment, openSeed, openTowns, seedNames } from '../houses/open-house.js'

const rulebook = openTowns('harrowmere', 'saltmarrow')
const equipment = openEquipment()

function findingsOf(seed: (typeof seedNames)[number]): readonly Finding[] {
  const house = openSeed(seed)
  const document = { ...(isMap(house) ? house : {}), installation: 1 as const }
  return checkInstallation(document, rulebook, { equipment, judgedOn: '2025-11-01' }).findings
}

/** What comes first is worse; at one severity what is wrong comes before what cannot be told, then the walk round the house. */
function rankOf({ severity, verdict, subject }: Finding): readonly [number, number, number] {
  return [severities.indexOf(severity), verdict === 'fail' ? 0 : 1, places.indexOf(subject.place)]
}

function isBehind(one: Finding, other: Finding): boolean {
  const [a, b] = [rankOf(one), rankOf(other)]
  const at = a.findIndex((rank, index) => rank !== b[index])
  return at >= 0 && a[at]! > b[at]!
}

describe.each(seedNames)('the findings of %s', (seed) => {
  const findings = findingsOf(seed)

  it('stand in the order in which they are mended', () => {
    expect(findings.filter((finding, at) => at > 0 && isBehind(findings[at - 1]!, finding))).toEqual([])
  })

  it('stand in that order however they come in', () => {
    const keys = findings.map(({ key }) => key)
    fc.assert(
      fc.property(fc.shuffledSubarray([...findings], { minLength: findings.length }), (mixed) => {
        expect(inOrder(mixed).map(({ key }) => key)).toEqual(keys)
      }),
      { numRuns: 50 },
    )
  })
})

it('stop stands before must, must before should, should before advice', () => {
  expect(severities).toEqual(['stop', 'must', 'should', 'advice'])
})
