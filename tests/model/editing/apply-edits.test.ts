import { describe, expect, it } from 'vitest'
import { applyEdits, forgettable, type Edit } from '../../../src/model/editing/index.js'
import { edited, item, refusals } from './editing.js'
import { house, model } from './sample.js'

describe('a list of edits', () => {
  it('is made in order, each on what the one before left', () => {
    const document = edited(
      { insert: { id: 'ISO3', kind: 'isolationValve' }, in: 'L-relief', after: 'B1.relief' },
      { set: 'ISO3.locked', to: 'no' },
      { remove: 'ISO1' },
    )
    expect(item(document, 'components', 'ISO3')).toEqual({ id: 'ISO3', kind: 'isolationValve', locked: 'no' })
    expect(document['complete']).toMatchObject({ all: '17', closable: '2' })
  })

  it('tells every edit that cannot be made, by its place', () => {
    const problems = refusals({ set: 'RV9.setPressure', to: '1 psi' }, { forget: 'EX1.volume' }, { remove: 'C9' })
    expect(problems.map(({ code, pointer }) => [code, pointer])).toEqual([
      ['unknown-id', '/edits/0'],
      ['unknown-id', '/edits/2'],
    ])
  })

  it('shares what no edit touched', () => {
    const document = edited({ set: 'RV1.setPressure', to: '50 psi' })
    expect(document['lines']).toBe(house['lines'])
    expect(item(document, 'components', 'B1')).toBe(item(house, 'components', 'B1'))
  })

  it('gives the very document back where there is nothing to do', () => {
    expect(edited()).toBe(house)
  })

  it.each([
    ['{"sett":"RV1.setPressure","to":"5 psi"}', 'unknown-edit', 'set'],
    ['{"insert":{"id":"AV1","kind":"airVent"},"aftr":"B1.relief"}', 'unknown-key', 'after'],
    ['{"forget":["RV1"]}', 'unreadable-name', undefined],
    ['"RV1"', 'unknown-edit', undefined],
    ['{}', 'unknown-edit', undefined],
  ])('refuses %s as read from a file', (text, code, nearest) => {
    const edits: Edit[] = [JSON.parse(text)]
    const result = applyEdits(house, edits, model)
    expect(result.ok ? [] : result.problems.map((problem) => [problem.code, problem.nearest])).toEqual([
      [code, nearest],
    ])
  })
})

describe('a document without usable shape', () => {
  it.each([
    ['text', ''],
    [null, ''],
    [[], ''],
    [{ components: {} }, '/components'],
    [{ lines: ['L1'] }, '/lines/0'],
    [{ site: 'hill' }, '/site'],
    [{ none: 'boiler' }, '/none'],
    [{ complete: [] }, '/complete'],
  ])('%j is refused and says nothing to forget', (document, pointer) => {
    expect(applyEdits(document, [], model)).toMatchObject({
      ok: false,
      problems: [{ code: 'unreadable-shape', pointer }],
    })
    expect(forgettable(document, model)).toEqual([])
  })
})
