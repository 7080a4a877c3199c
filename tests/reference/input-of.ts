import type { CheckRecord } from './adapter.js'

/** A number among the inputs of a record. */
export function inputOf({ id, inputs }: CheckRecord, name: string): number {
  const value = inputs[name]
  if (typeof value !== 'number') throw new Error(`${id} has no number named ${name}.`)
  return value
}

/** A text among the inputs of a record. */
export function textOf({ id, inputs }: CheckRecord, name: string): string {
  const value = inputs[name]
  if (typeof value !== 'string') throw new Error(`${id} has no text named ${name}.`)
  return value
}

/** A list of numbers among the inputs of a record. */
export function numbersOf({ id, inputs }: CheckRecord, name: string): readonly number[] {
  const value = inputs[name]
  if (!Array.isArray(value)) throw new Error(`${id} has no list named ${name}.`)
  return value.map((each: unknown) => {
    if (typeof each === 'number') return each
    throw new Error(`${id} has something else than numbers in ${name}.`)
  })
}
