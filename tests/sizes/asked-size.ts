import type { SizeLine, Sizes, SizeTopic } from '../../src/checks/index.js'
import { applyEdits, type Edit } from '../../src/model/index.js'
import { sizeInstallation } from '../../src/size-installation.js'
import { parseQuantity } from '../../src/units/index.js'
import { openEquipment, openSeed, openTowns } from '../houses/open-house.js'

const rulebook = openTowns('harrowmere')
const equipment = openEquipment()

/** A line of a topic of a seed, as edited. */
export interface AskedLine {
  readonly topic: SizeTopic
  readonly name: string
  readonly of?: string
}

/** All sizes of a seed as edited. */
export function sizesOfHouse(seed: 'larkspur-lane' | 'coopers-stair', edits: readonly Edit[]): Sizes {
  const edited = applyEdits(openSeed(seed), edits, rulebook.model)
  if (!edited.ok) throw new Error(edited.problems.map(({ message }) => message).join(' '))
  return sizeInstallation({ ...edited.document, installation: 1 }, rulebook, { equipment })
}

/** Finds a line of a seed as edited. */
export function sizesOf(
  seed: 'larkspur-lane' | 'coopers-stair',
  edits: readonly Edit[],
): (asked: AskedLine) => SizeLine {
  const { topics } = sizesOfHouse(seed, edits)
  return ({ topic, name, of }) => {
    const lines = topics.find((one) => one.topic === topic)?.lines ?? []
    const found = lines.find((line) => line.name === name && line.of === of)
    if (found === undefined) throw new Error(`no line "${name}" among ${lines.map((one) => one.name).join(', ')}`)
    return found
  }
}

/** Value of a line over the amount that is expected. */
export function over(line: SizeLine, expected: string): number {
  if (line.state !== 'sized') throw new Error(JSON.stringify(line))
  const wanted = parseQuantity(expected, line.quantity)
  if (!wanted.ok) throw new Error(wanted.message)
  return line.value / wanted.low
}
