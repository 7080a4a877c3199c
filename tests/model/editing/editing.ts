import { applyEdits, type Edit, type PlainMap } from '../../../src/model/editing/index.js'
import type { Problem } from '../../../src/model/index.js'
import { house, model, problemsIn } from './sample.js'

/** The house after some edits, which must leave it readable. */
export function edited(...edits: readonly Edit[]): PlainMap {
  const result = applyEdits(house, edits, model)
  if (!result.ok) throw new Error(result.problems.map((problem) => problem.message).join(' '))
  const problems = problemsIn(result.document)
  if (problems.length > 0) throw new Error(problems.join('\n'))
  return result.document
}

/** What stands in the way of some edits; nothing where they can be made. */
export function refusals(...edits: readonly Edit[]): readonly Problem[] {
  const result = applyEdits(house, edits, model)
  return result.ok ? [] : result.problems
}

/** An item of a section by its id or name. */
export function item(document: PlainMap, section: string, id: string): unknown {
  return list(document[section]).find((one) => isPlain(one) && [one['id'], one['name']].flat().includes(id))
}

export function ids(document: PlainMap, section: string): readonly unknown[] {
  return list(document[section]).flatMap((one) => (isPlain(one) ? [one['id'] ?? one['name']].flat() : []))
}

export function list(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : []
}

export function isPlain(value: unknown): value is PlainMap {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
