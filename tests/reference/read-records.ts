import { readFileSync } from 'node:fs'
import * as z from 'zod/mini'
import { si } from '../../src/units/index.js'
import type { CheckRecord } from './adapter.js'

/** All check values with their sources, as they were published or worked out by others. */
export function readRecords(): readonly CheckRecord[] {
  const text = readFileSync(new URL('./check-values.json', import.meta.url), 'utf8')
  return z.array(record).parse(JSON.parse(text))
}

const writtenSize = z.pipe(
  z.string(),
  z.transform((text): number => si('nominalSize', text)),
)

const record = z.strictObject({
  id: z.string().check(z.minLength(1)),
  quantity: z.string(),
  inputs: z.record(z.string(), z.unknown()),
  // Sizes of gas pipe are written as they are called out: 3/4.
  expected: z.union([z.number(), writtenSize]),
  unit: z.string(),
  tolerance: z.number().check(z.nonnegative()),
  tolerance_kind: z.enum(['rel', 'abs']),
  source: z.string().check(z.minLength(1)),
  basis: z.enum(['READ', 'MEMORY', 'COMPUTED', 'PRACTICE']),
  independent: z.boolean(),
  note: z.optional(z.string()),
})
