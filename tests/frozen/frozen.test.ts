import { describe, expect, it } from 'vitest'
import { base } from '../../src/base.js'
import { tryReadInstallation } from '../../src/model/index.js'
import { openRulebook } from '../../src/rulebook/index.js'
import { openFile } from '../houses/open-house.js'

const { model } = openRulebook({ ruleSets: [base] })

/** One document for each version of the schema, as it was on its first day. It is never edited, and always readable. */
const frozen = ['installation-1']

describe('documents of every schema version', () => {
  it.each(frozen)('%s is read without a problem', (name) => {
    const read = tryReadInstallation(openFile(`tests/frozen/${name}.yaml`), model)
    expect(read.ok ? [] : read.problems).toEqual([])
  })
})
