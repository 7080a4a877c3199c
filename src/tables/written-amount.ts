import * as z from 'zod/mini'
import { type QuantityName, si } from '../units/index.js'

/** A figure written as its source prints it, `113 F`, read into the unit its quantity is held in. */
export function writtenAmount(quantity: QuantityName): z.ZodMiniType<number, string> {
  return z.pipe(
    z.string(),
    z.transform((text) => si(quantity, text)),
  )
}
