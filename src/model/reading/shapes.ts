import type { ProblemList, Steps } from './problems.js'

export function isMap(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

/** A scalar as text; the booleans and numbers of JSON are taken as they would be typed. */
export function textOf(value: unknown): string | undefined {
  if (typeof value === 'string') return value.trim()
  if (typeof value === 'number') return String(value)
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  return undefined
}

/** The value as a list, or a problem. Nothing written is an empty list. */
export function listAt(value: unknown, steps: Steps, problems: ProblemList): readonly unknown[] {
  if (value === undefined) return []
  if (Array.isArray(value)) return value
  problems.add('not-a-list', steps, 'A list is expected here.', { received: describe(value) })
  return []
}

export function mapAt(
  value: unknown,
  steps: Steps,
  problems: ProblemList,
): Readonly<Record<string, unknown>> | undefined {
  if (value === undefined) return undefined
  if (isMap(value)) return value
  problems.add('not-a-map', steps, 'Names with values are expected here.', { received: describe(value) })
  return undefined
}

export function describe(value: unknown): string {
  if (value === null) return 'nothing'
  if (Array.isArray(value)) return 'a list'
  return textOf(value) ?? 'a map'
}
