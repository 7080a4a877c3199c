import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { applyEdits, forgettable, readEquipment, tryReadInstallation } from '../../src/model/index.js'
import { openEquipment, openSeed, openTowns, seedNames } from '../houses/open-house.js'
import { breaksLawOfInformation } from './law-of-information.js'
import { look } from './snapshot.js'
import { anyAddress, vary } from './variants.js'

const rulebook = openTowns('harrowmere', 'saltmarrow')
const { model } = rulebook
const equipment = openEquipment().flatMap((raw) => {
  const read = readEquipment(raw, model)
  return read.ok ? [read.equipment] : []
})
const view = { rulebook, equipment }
const thorough = process.env.CI !== undefined

function forget(document: unknown, address: string): unknown {
  const edited = applyEdits(document, [{ forget: address }], model)
  if (!edited.ok) throw new Error(`${address}: ${edited.problems.map((problem) => problem.message).join(' ')}`)
  return edited.document
}

describe('the law of information', () => {
  it.each(seedNames)('holds for every value, thing and section of %s', (name) => {
    const house = openSeed(name)
    const before = look(house, view)
    const broken = forgettable(house, model).flatMap((address) => breaksLawOfInformation(before, look(forget(house, address), view)).map((why) => `forget ${address}: ${why}`))
    expect(broken).toEqual([])
  })

  // Four small houses made different at random, then three things forgotten one after another.
  const runs = Number(process.env.LAW_RUNS ?? (thorough ? 16_000 : 800))
  it(`holds over ${runs} generated houses, three forgettings each`, () => {
    const houses = ['minimal', 'first-visit'].map((name) => openSeed(name === 'minimal' ? 'minimal' : 'first-visit'))
    fc.assert(
      fc.property(fc.gen(), (g) => {
        const start = vary(g(fc.constantFrom, ...houses), model, g, g(fc.nat, { max: 6 }))
        if (!tryReadInstallation(start, model).ok) return
        walk(start, g)
      }),
      { numRuns: runs },
    )
  }, 1_200_000)

  it('holds over the big houses made different, three forgettings each', () => {
    const houses = [openSeed('larkspur-lane'), openSeed('coopers-stair')]
    fc.assert(
      fc.property(fc.gen(), (g) => walk(vary(g(fc.constantFrom, ...houses), model, g, g(fc.nat, { max: 4 })), g)),
      { numRuns: Number(process.env.LAW_RUNS_BIG ?? (thorough ? 1_000 : 60)) },
    )
  }, 1_200_000)
})

function walk(start: unknown, g: fc.GeneratorValue): void {
  const seen: { readonly document: unknown; readonly snapshot: ReturnType<typeof look> }[] = []
  let document = start
  if (!tryReadInstallation(document, model).ok) return
  seen.push({ document, snapshot: look(document, view) })
  for (let step = 0; step < 3; step += 1) {
    const address = anyAddress(document, model, g)
    if (address === undefined) return
    document = forget(document, address)
    const snapshot = look(document, view)
    const before = seen.at(-1)
    expect(before === undefined ? [] : breaksLawOfInformation(before.snapshot, snapshot).map((why) => `forget ${address}: ${why}`)).toEqual([])
    seen.push({ document, snapshot })
  }
}
