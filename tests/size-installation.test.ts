import { describe, expect, it } from 'vitest'
import { applyEdits, type Edit, type InstallationWritten } from '../src/model/index.js'
import { sizeInstallation } from '../src/size-installation.js'
import { openEquipment, openSeed, openTowns } from './houses/open-house.js'

const rulebook = openTowns('harrowmere')
const equipment = openEquipment()
const seed = (name: 'larkspur-lane' | 'coopers-stair'): InstallationWritten => openSeed(name) as InstallationWritten
const sized = new Map(
  (['larkspur-lane', 'coopers-stair'] as const).map((name) => [
    name,
    sizeInstallation(seed(name), rulebook, { equipment }),
  ]),
)

describe('sizes of the two houses', () => {
  it('every sized line ends its working with its value', () => {
    const lines = [...sized.values()].flatMap(({ topics }) => topics.flatMap((topic) => topic.lines))
    const astray = lines.filter(
      (line) =>
        line.state === 'sized' && line.working.length > 0 && !line.working.some(({ value }) => same(value, line.value)),
    )
    expect(astray).toEqual([])
    expect(lines.filter((line) => line.state === 'sized' && !Number.isFinite(line.value))).toEqual([])
  })
})

const same = (one: number, other: number): boolean => Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(other))

function sizesWith(edits: readonly Edit[]): ReturnType<typeof sizeInstallation> {
  const edited = applyEdits(seed('larkspur-lane'), edits, rulebook.model)
  if (!edited.ok) throw new Error(edited.problems.map(({ message }) => message).join(' '))
  return sizeInstallation({ ...edited.document, installation: 1 }, rulebook, { equipment })
}

describe('what is not known', () => {
  it('is named, and only lines that need it are open', () => {
    const { topics } = sizesWith([{ forget: 'heatingFluid.highestMean' }])
    const open = topics.flatMap(({ lines }) => lines).filter((line) => line.state === 'open')
    expect(open.length).toBeGreaterThan(2)
    for (const line of open.filter(({ name }) => name.includes('tank needed')))
      expect(line).toMatchObject({ missing: [{ subject: 'heatingFluid', fact: 'highestMean' }] })
  })
})

describe('a fuel that is no gas', () => {
  it('has no gas pressure, and says so', () => {
    const gas = sizesWith([{ set: 'fuel.type', to: 'oil' }]).topics.find(({ topic }) => topic === 'gas')?.lines ?? []
    expect(gas.find(({ name, of }) => of === 'B1' && name.startsWith('pressure left'))).toMatchObject({
      state: 'impossible',
      why: 'The house is supplied with a fuel that is no gas.',
    })
  })
})
