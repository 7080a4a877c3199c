import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundsOf, type Answer } from '../../src/facts/index.js'
import { applyEdits, forgettable, type PlainMap } from '../../src/model/editing/index.js'
import type { Thing } from '../../src/model/index.js'
import { askIn, factsOf, handles, model } from './asking.js'
import { houses } from './houses.js'
import { sizedFacts } from './sized-facts.js'

function forget(document: PlainMap, pick: number): PlainMap {
  const addresses = forgettable(document, model)
  const address = addresses[pick % Math.max(1, addresses.length)]
  if (address === undefined) return document
  const edited = applyEdits(document, [{ forget: address }], model)
  if (!edited.ok) throw new Error(edited.problems.map(({ message }) => message).join('\n'))
  return edited.document
}

/** Whether an answer says nothing that the fuller one does not say. */
function saysLess(fuller: Answer, less: Answer): boolean {
  if (less.state === 'unknown') return true
  if (fuller.state === 'word' && less.state === 'word') return fuller.word === less.word
  if (fuller.state !== 'number' || less.state !== 'number') return false
  const [narrow, wide] = [boundsOf(fuller), boundsOf(less)]
  return wide.low <= narrow.low && wide.high >= narrow.high
}

interface Told {
  readonly fact: string
  readonly subject: string
  readonly answer: Answer
}

/** Every fact of everything listed. */
function allOf(document: PlainMap): readonly Told[] {
  const facts = factsOf(document)
  const { ofKind, model } = facts.strict.installation
  const subjects = (of: string): readonly Thing[] =>
    (model.kindsIn.get(of) ?? [of]).flatMap((kind) => ofKind.get(kind) ?? [])
  return handles.flatMap(({ of, name }) =>
    subjects(of).map(({ id }) => ({ fact: name, subject: id, answer: askIn(facts, id, name) })),
  )
}

function collides(document: PlainMap): boolean {
  return factsOf(document).contradictions.some(({ code }) => code === 'flows-collide')
}

function isSettled(answer: Answer): boolean {
  return answer.state === 'word' || (answer.state === 'number' && answer.low === answer.high)
}

/** Nothing is missing, and the witness says which number cannot be. */
function isImpossible({ state, missing, witness }: Answer): boolean {
  return state === 'unknown' && missing.length === 0 && witness !== undefined && witness.length > 0
}

describe('laws of derived facts', () => {
  it('forgetting makes every answer wider or unknown, never another', () => {
    fc.assert(
      fc.property(houses, fc.array(fc.nat(), { minLength: 1, maxLength: 6 }), (house, picks) => {
        // What is drawn against itself says nothing, and says more when a part of it is gone.
        fc.pre(!collides(house))
        const documents = picks.reduce<readonly PlainMap[]>(
          (sofar, pick) => [...sofar, forget(sofar.at(-1) ?? house, pick)],
          [house],
        )
        const answers = documents.map(allOf)
        for (const [index, less] of answers.entries()) {
          const fuller = answers[index - 1] ?? less
          const flipped = less.filter(({ fact, subject, answer }) => {
            const before = fuller.find((one) => one.fact === fact && one.subject === subject)
            return before === undefined || !saysLess(before.answer, answer)
          })
          expect(flipped).toEqual([])
        }
      }),
      { numRuns: 120 },
    )
  })

  it('what is missing is told exactly where more could be known', () => {
    fc.assert(
      fc.property(houses, (house) => {
        expect(
          allOf(house).filter(
            ({ answer }) => (answer.missing.length === 0) !== isSettled(answer) && !isImpossible(answer),
          ),
        ).toEqual([])
      }),
      { numRuns: 200 },
    )
  })

  it('the houses of these laws leave each fact known here and open there', () => {
    const told = fc.sample(houses, { numRuns: 200, seed: 7 }).flatMap(allOf)
    const seen = handles.map(({ name }) => {
      const answers = told.filter(({ fact }) => fact === name).map(({ answer }) => isSettled(answer))
      return { name, known: answers.includes(true), open: answers.includes(false) }
    })
    // What a line carries is part of the drawing: it is always said.
    // What is sized from a whole house has a house of its own, in sized-facts.test.ts.
    const here = seen.filter(({ name }) => !sizedFacts.includes(name))
    expect(here).toEqual(here.map(({ name }) => ({ name, known: true, open: name !== 'carries' })))
  })
})
