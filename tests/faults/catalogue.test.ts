import { describe, expect, it } from 'vitest'
import { openTowns } from '../houses/open-house.js'
import { faults } from './all-faults.js'
import { catalogue } from './catalogue.js'

const { rulesById } = openTowns('harrowmere')
const fired = new Set(
  faults.flatMap(([, , lines]) => lines.flatMap((line) => / fail ([^/]+\/[^/]+)\//.exec(line)?.[1] ?? [])),
)

describe('the fault catalogue', () => {
  it('is complete: 168 rows, each once', () => {
    expect(catalogue.map(([row]) => row)).toEqual(Array.from({ length: 168 }, (_each, index) => index + 1))
  })

  it.each(catalogue)('row %i, %s, is found by a rule that fires, or says why by none', (_row, _fault, found) => {
    if (typeof found === 'string') {
      expect(found.length).toBeGreaterThan(20)
      return
    }
    expect(found.filter((rule) => !rulesById.has(rule))).toEqual([])
    expect(found.filter((rule) => !fired.has(rule))).toEqual([])
  })
})
