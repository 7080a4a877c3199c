import { describe, expect, it } from 'vitest'
import { builtInKinds, defineModel, tryReadInstallation } from '../../../src/model/index.js'

const model = defineModel(builtInKinds)
const codes = (document: unknown): readonly string[] => {
  const read = tryReadInstallation(document, model)
  return read.ok ? [] : read.problems.map((problem) => problem.code)
}

describe('hostile documents', () => {
  it('that turn in circles end in one sentence', () => {
    const circle: Record<string, unknown> = { installation: 1 }
    circle['x-self'] = circle
    expect(codes(circle)).toEqual(['too-deep'])
  })

  it('that nest without end end in one sentence', () => {
    const deep = Array.from({ length: 10_000 }).reduce<unknown>((inner) => ({ 'x-in': inner }), 'end')
    expect(codes({ installation: 1, 'x-deep': deep })).toEqual(['too-deep'])
  })

  it('that share values without end end in one sentence', () => {
    const bomb = Array.from({ length: 40 }).reduce<unknown>((inner) => [inner, inner], 'boom')
    expect(codes({ installation: 1, 'x-bomb': bomb })).toEqual(['too-large'])
  })

  it('with names of the language in them are read as any other name', () => {
    const document: unknown = JSON.parse(
      '{"installation":"1","__proto__":{"a":"b"},"components":[{"id":"B1","kind":"constructor"},{"id":"toString","kind":"boiler","hasOwnProperty":"x"}]}',
    )
    expect(codes(document)).toEqual(['unknown-key', 'unknown-kind', 'unknown-key'])
    expect(Object.prototype).not.toHaveProperty('a')
  })

  it('with numbers beyond reason are refused, and none becomes a value', () => {
    const mawp = (text: string): readonly string[] =>
      codes({ installation: 1, components: [{ id: 'B1', kind: 'boiler', mawp: text }] })
    for (const text of ['1e999 psi', '9'.repeat(400) + ' psi', 'NaN psi', 'Infinity psi', '-99999 psi'])
      expect(mawp(text)).toEqual(['unreadable-quantity'])
  })

  it('that are no documents say so', () => {
    for (const odd of [null, 7, 'text', [], undefined]) expect(codes(odd).length).toBeGreaterThan(0)
  })
})
