import { airSeparator, closable, fitting, type Thing } from '../model/index.js'
import { isInFamily } from './of-kind.js'

/** Pipe and pieces that belong to one place in the pipe: what hangs on them hangs together. */
export function isTankJoint(thing: Thing): boolean {
  if (thing.kind.section === 'lines' || thing.kind.name === airSeparator.name) return true
  return isInFamily(thing, fitting) || isInFamily(thing, closable)
}
