import { setImmediate } from 'node:timers/promises'
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

// A newcomer's run is short; the build runs at least 50,000 cases.
const thorough = process.env.CI !== undefined
const small = thorough ? 16_500 : 400
const big = thorough ? 600 : 20
const longest = 3_600_000

describe('the law of information', () => {
  it.each(seedNames)(
    'holds for every value, thing and section of %s',
    async (name) => {
      const house = openSeed(name)
      const before = look(house, view)
      const broken: string[] = []
      for (const address of forgettable(house, model)) {
        await setImmediate()
        broken.push(
          ...breaksLawOfInformation(before, look(forget(house, address), view)).map(
            (why) => `forget ${address}: ${why}`,
          ),
        )
      }
      expect(broken).toEqual([])
    },
    longest,
  )

  it(
    `holds over ${small} small houses made different, three forgettings each`,
    async () => {
      await walkMany([openSeed('minimal'), openSeed('first-visit')], small, 6)
    },
    longest,
  )

  it(
    `holds over ${big} big houses made different, three forgettings each`,
    async () => {
      await walkMany([openSeed('larkspur-lane'), openSeed('coopers-stair')], big, 4)
    },
    longest,
  )
})

async function walkMany(houses: readonly unknown[], numRuns: number, changes: number): Promise<void> {
  const property = fc.asyncProperty(fc.gen(), async (g) => {
    await setImmediate()
    const start = vary(g(fc.constantFrom, ...houses), model, g, g(fc.nat, { max: changes }))
    expect(breaksOnTheWay(start, g)).toEqual([])
  })
  await fc.assert(property, { numRuns })
}

/** Forgets three things one after another and holds each step against the one before. */
function breaksOnTheWay(start: unknown, g: fc.GeneratorValue): readonly string[] {
  if (!tryReadInstallation(start, model).ok) return []
  const broken: string[] = []
  let document = start
  let before = look(document, view)
  for (let step = 0; step < 3; step += 1) {
    const address = anyAddress(document, model, g)
    if (address === undefined) return broken
    document = forget(document, address)
    const after = look(document, view)
    broken.push(...breaksLawOfInformation(before, after).map((why) => `forget ${address}: ${why}`))
    before = after
  }
  return broken
}

function forget(document: unknown, address: string): unknown {
  const edited = applyEdits(document, [{ forget: address }], model)
  if (!edited.ok) throw new Error(`${address}: ${edited.problems.map((problem) => problem.message).join(' ')}`)
  return edited.document
}
