import { existsSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { openTowns } from '../houses/open-house.js'
import { faults, firedRules } from './all-faults.js'
import { catalogue } from './catalogue.js'

const { rulesById } = openTowns('harrowmere')

describe('the fault catalogue', () => {
  it('leaves a charge read with the system on undecided, row 164', () => {
    const lines = faults.flatMap(([, , told]) => told)
    expect(lines).toContain('must undecided expansion/charge-matches-fill/EX1')
  })

  it('is complete: 168 rows, each once', () => {
    expect(catalogue.map(([row]) => row)).toEqual(Array.from({ length: 168 }, (_each, index) => index + 1))
  })

  it.each(catalogue)('row %i, %s, is found by a rule that fires, or says why by none', (_row, _fault, found) => {
    if (typeof found === 'string') {
      // A reason that names a rule or a file of tests names one that is there.
      const named = found.match(/[a-z-]+\/[a-z/.-]+[a-z]/g) ?? []
      expect(named.filter((name) => !rulesById.has(name) && !existsSync(name))).toEqual([])
      expect(found.length).toBeGreaterThan(20)
      return
    }
    expect(found.filter((rule) => !rulesById.has(rule))).toEqual([])
    expect(found.filter((rule) => !firedRules.has(rule))).toEqual([])
  })
})
