import type { Model } from '../model.js'
import { pointerOf, type Problem } from '../problem.js'
import { isMap } from '../reading/index.js'
import { singletonsOf } from './fields.js'
import { at, isList, type PlainMap } from './plain.js'
import { listSections } from './sections.js'

export type Shaped =
  { readonly ok: true; readonly document: PlainMap } | { readonly ok: false; readonly problems: readonly Problem[] }

/** A document as far as edits must be able to rely on it: sections are lists of maps, or maps. The rest is for reading to tell. */
export function shapeOf(document: unknown, model: Model): Shaped {
  if (!isMap(document)) return { ok: false, problems: [problem([], 'a map')] }
  const listed = listSections.flatMap((section) => listProblems(document, section))
  const maps = ['complete', 'kept', ...singletonsOf(model).map((kind) => kind.name)]
  const problems = [...listed, ...maps.flatMap((key) => mapProblems(document, key)), ...noneProblems(document)]
  return problems.length === 0 ? { ok: true, document } : { ok: false, problems }
}

function listProblems(document: PlainMap, section: string): readonly Problem[] {
  const value = at(document, section)
  if (value === undefined) return []
  if (!isList(value)) return [problem([section], 'a list')]
  return value.flatMap((item, index) => (isMap(item) ? [] : [problem([section, index], 'a map')]))
}

function mapProblems(document: PlainMap, key: string): readonly Problem[] {
  const value = at(document, key)
  return value === undefined || value === 'unknown' || isMap(value) ? [] : [problem([key], 'a map')]
}

function noneProblems(document: PlainMap): readonly Problem[] {
  const value = at(document, 'none')
  return value === undefined || value === 'unknown' || isList(value) ? [] : [problem(['none'], 'a list')]
}

function problem(steps: readonly (string | number)[], expected: string): Problem {
  return { code: 'unreadable-shape', pointer: pointerOf(steps), message: `Here must stand ${expected}.`, expected }
}
