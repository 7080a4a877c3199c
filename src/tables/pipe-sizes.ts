import * as z from 'zod/mini'
import packed from './pipe-sizes.generated.json' with { type: 'json' }
import { writtenAmount } from './written-amount.js'

/** Pipe and tube by its standard and wall: copper by type, steel and stainless by schedule, PEX in SDR9. */
export type PipeName = (typeof pipeNames)[number]

/** One size of a pipe. */
export interface PipeSize {
  readonly pipe: PipeName
  /** Nominal inches. */
  readonly size: number
  /** m */
  readonly outside: number
  /** m; of PEX the average one. */
  readonly inside: number
}

/**
 * Diameters of a pipe; nothing for a size that is not listed.
 *
 * @param size nominal inches
 * @example
 * pipeSize('copper-M', 0.75)?.inside // 0.0206, or 0.811 in
 */
export function pipeSize(pipe: PipeName, size: number): PipeSize | undefined {
  return rows.find((row) => row.pipe === pipe && Math.abs(row.size - size) < 1e-9)
}

/** All listed sizes of a pipe, narrowest first. */
export function pipeSizes(pipe: PipeName): readonly PipeSize[] {
  return rows.filter((row) => row.pipe === pipe)
}

/** The pipes that are listed. */
export const pipeNames = Object.freeze([
  'copper-K',
  'copper-L',
  'copper-M',
  'copper-DWV',
  'steel-40',
  'steel-80',
  'stainless-10S',
  'stainless-40S',
  'pex',
] as const)

const rows: readonly PipeSize[] = z.parse(
  z.strictObject({
    source: z.string(),
    rows: z.array(
      z.strictObject({
        pipe: z.enum(pipeNames),
        size: writtenAmount('nominalSize'),
        outside: writtenAmount('length'),
        inside: writtenAmount('length'),
      }),
    ),
  }),
  packed,
).rows
