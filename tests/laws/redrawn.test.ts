import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { askFact, gatherFacts, type Answer } from '../../src/facts/index.js'
import { applyEdits, isMap, readShelf, tryReadInstallation, type Edit, type PlainMap } from '../../src/model/index.js'
import { catalogue, handles, model } from '../checks/asking.js'
import { houses } from '../checks/houses.js'
import { openEquipment, openSeed } from '../houses/open-house.js'
import { drawnBackwards, drawnInPieces, linesOf } from './redrawn.js'

const equipment = readShelf(openEquipment(), model)
const seeds = (['larkspur-lane', 'coopers-stair'] as const).map((name) => {
  const seed = openSeed(name)
  return { name, house: isMap(seed) ? seed : {} }
})

/** All facts and checks of everything listed but lines: `RV1.way yes`, numbers to nine digits. */
function answersOf(document: PlainMap): ReadonlyMap<string, string> {
  const read = tryReadInstallation({ ...document, installation: '1' }, model, equipment)
  if (!read.ok) throw new Error(read.problems.map(({ pointer, message }) => `${pointer}: ${message}`).join('\n'))
  const { strict } = gatherFacts(read.installation, catalogue)
  const { ofKind } = strict.installation
  const asked = handles.flatMap(({ of, name }) =>
    (model.kindsIn.get(of) ?? [of]).flatMap((kind) =>
      (kind === 'line' ? [] : (ofKind.get(kind) ?? [])).map((thing) => ({ thing, name })),
    ),
  )
  return new Map(
    asked.map(({ thing, name }) => [`${thing.id}.${name}`, print(askFact(catalogue, strict, thing, name))]),
  )
}

function print(answer: Answer): string {
  if (answer.state === 'word') return answer.word
  return answer.state === 'number' ? [answer.low, answer.high].map((end) => end.toPrecision(9)).join(' to ') : answer.state
}

function changed(house: PlainMap, edits: readonly Edit[]): PlainMap {
  const edited = applyEdits(house, edits, model)
  if (!edited.ok) throw new Error(edited.problems.map(({ message }) => message).join('\n'))
  return edited.document
}

const different = (one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): readonly string[] =>
  [...new Set([...one.keys(), ...other.keys()])]
    .filter((key) => one.get(key) !== other.get(key))
    .map((key) => `${key}: ${one.get(key) ?? ''} became ${other.get(key) ?? ''}`)

describe('lines listed from their other end', () => {
  it.each(seeds)('change no answer in $name', ({ house }) => {
    expect(different(answersOf(house), answersOf(drawnBackwards(house, model)))).toEqual([])
  })

  it('change no answer in any house', () => {
    fc.assert(
      fc.property(houses, (house) => {
        expect(different(answersOf(house), answersOf(drawnBackwards(house, model)))).toEqual([])
      }),
      { numRuns: 100 },
    )
  })
})

describe('lines told in two pieces', () => {
  it.each(seeds)('change no answer in $name', ({ house }) => {
    for (const pick of [0, 1, 2])
      expect(different(answersOf(house), answersOf(drawnInPieces(house, model, pick)))).toEqual([])
  })

  it('change no answer in any house', () => {
    fc.assert(
      fc.property(houses, fc.nat(5), (house, pick) => {
        expect(different(answersOf(house), answersOf(drawnInPieces(house, model, pick)))).toEqual([])
      }),
      { numRuns: 100 },
    )
  })
})
void linesOf
void changed
