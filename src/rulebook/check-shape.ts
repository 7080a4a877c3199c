import * as z from 'zod/mini'
import { describe, isMap, nearestIn, type ProblemList, type Steps } from '../model/index.js'

/** Holds data against a shape. Every mistake becomes a problem with its place and the nearest right name. */
export function checkShape<T>(
  shape: z.ZodMiniType<T>,
  data: unknown,
  steps: Steps,
  problems: ProblemList,
): T | undefined {
  const parsed = z.safeParse(shape, data, { jitless: true })
  if (parsed.success) return parsed.data
  for (const issue of parsed.error.issues) reportIssue(issue, shape, { data, steps, problems })
  return undefined
}

interface Place {
  readonly data: unknown
  readonly steps: Steps
  readonly problems: ProblemList
}

function reportIssue(issue: z.core.$ZodIssue, shape: z.ZodMiniType, { data, steps, problems }: Place): void {
  const path = issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step))
  const at = [...steps, ...path]
  const received = path.reduce<unknown>(
    (value, step) => (isMap(value) || Array.isArray(value) ? Reflect.get(value, step) : undefined),
    data,
  )
  if (issue.code === 'unrecognized_keys') {
    const known = keysAt(shape, path)
    for (const key of issue.keys)
      problems.add('unknown-key', [...at, key], `There is no "${key}" here.`, {
        ...nearestIn(key, known),
        ...(known.length > 0 ? { expected: known.join(', ') } : {}),
      })
    return
  }
  if (issue.code === 'invalid_value') {
    const choices = issue.values.map(String)
    const missing = received === undefined
    problems.add(
      missing ? 'missing-key' : 'not-a-choice',
      at,
      missing
        ? `"${String(path.at(-1))}" is missing; it is one of ${choices.join(', ')}.`
        : `${describe(received)} is not one of ${choices.join(', ')}.`,
      nearestIn(describe(received), choices),
    )
    return
  }
  const missing = received === undefined
  problems.add(
    missing ? 'missing-key' : 'wrong-shape',
    at,
    missing ? `"${String(path.at(-1) ?? '')}" is missing.` : `${describe(received)} does not fit here.`,
  )
}

/** Keys that a strict map at a path may have. */
function keysAt(shape: z.ZodMiniType, path: readonly (string | number)[]): readonly string[] {
  const end = path.reduce<unknown>((at, step) => descend(at, step), shape)
  const inner = fieldOf(unwrap(end), 'shape')
  return isMap(inner) ? Object.keys(inner) : []
}

function descend(shape: unknown, step: string | number): unknown {
  const open = unwrap(shape)
  if (typeof step === 'number') return fieldOf(open, 'element')
  const inner = fieldOf(open, 'shape')
  return isMap(inner) ? inner[step] : undefined
}

function unwrap(shape: unknown): unknown {
  const def = fieldOf(fieldOf(shape, '_zod'), 'def')
  const inner = fieldOf(def, 'innerType')
  return inner === undefined ? def : unwrap(inner)
}

function fieldOf(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null ? Reflect.get(value, name) : undefined
}
