import { airSeparator, closable, type Thing } from '../model/index.js'
import { isInFamily, isOfKind, isPipeOrFitting } from './of-kind.js'

/** Pipe and pieces that belong to one place in the pipe: what hangs on them hangs together. */
export function isTankJoint(thing: Thing): boolean {
  return isPipeOrFitting(thing) || isSeparator(thing) || isInFamily(thing, closable)
}

const isSeparator = isOfKind(airSeparator)
