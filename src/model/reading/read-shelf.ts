import type { Model } from '../model.js'
import { readEquipment, type Equipment } from './read-equipment.js'
import { UnreadableInstallation } from './read-or-throw.js'

/**
 * Reads every equipment file that a check was given.
 *
 * @throws UnreadableInstallation with the problems of all of them
 */
export function readShelf(written: readonly unknown[], model: Model): readonly Equipment[] {
  const read = written.map((one) => readEquipment(one, model))
  const problems = read.flatMap((one) => (one.ok ? [] : one.problems))
  if (problems.length > 0) throw new UnreadableInstallation(problems)
  return read.flatMap((one) => (one.ok ? [one.equipment] : []))
}
