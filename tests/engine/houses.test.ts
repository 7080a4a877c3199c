import { describe, expect, it } from 'vitest'
import { exportConditions, foldResult, RulebookEngine } from '../../src/engine/index.js'
import { prepare } from '../../src/engine/prepare.js'
import { checkInstallation } from '../../src/index.js'
import type { InstallationWritten } from '../../src/model/index.js'
import { openEquipment, openSeed, openTowns, seedNames } from '../houses/open-house.js'
import { refereeAll } from './referee.js'

const rulebook = openTowns('harrowmere', 'saltmarrow')
const equipment = openEquipment()
const engine = new RulebookEngine(rulebook)
const options = { equipment, judgedOn: '2025-11-01', listPassed: true }
/** In the last phase, so that every rule is due. */
function house(name: (typeof seedNames)[number]): InstallationWritten {
  const written = openSeed(name) as InstallationWritten
  return { ...written, phase: 'service' }
}

describe.each(seedNames)('the house %s', (name) => {
  it('has the same report through the engine', async () => {
    const { report, faults } = await engine.check(house(name), options)
    expect(JSON.stringify(report)).toBe(JSON.stringify(checkInstallation(house(name), rulebook, options)))
    expect([report.tally.asked > 20, faults]).toEqual([true, []])
  })

  it('has conditions that an untouched engine finds the same about', async () => {
    const exported = exportConditions(rulebook, prepare(house(name), rulebook, { equipment }).facts)
    const folded = (await refereeAll(exported)).map((result) => foldResult(result.conditions))
    const found = exported.map(
      ({ rule, subject, demand, part }, index) => `${rule} ${subject} ${demand} ${part} ${folded[index] ?? 'lost'}`,
    )
    expect(found).toEqual(
      exported.map(({ rule, subject, demand, part, truth }) => `${rule} ${subject} ${demand} ${part} ${truth}`),
    )
    expect(exported.length).toBeGreaterThan(50)
  })
})

describe('a host rule on a real house', () => {
  it('asks families, checks and one step along a reference', async () => {
    const hosted = new RulebookEngine(rulebook, {
      hostRules: [
        {
          name: 'shop/open-way',
          of: 'boiler',
          conditions: { all: [{ fact: 'boiler.reliefWay', operator: 'equal', value: 'open' }] },
          event: { type: 'ok' },
        },
        {
          name: 'shop/burns-gas',
          of: 'fuelBurner',
          conditions: { all: [{ fact: 'fuelBurner.input', operator: 'greaterThan', value: 0 }] },
          event: { type: 'ok' },
        },
        {
          name: 'shop/work',
          of: 'ventRun',
          conditions: { any: [{ fact: 'ventRun.appliance.work', operator: 'in', value: ['new', 'kept'] }] },
          event: { type: 'ok' },
        },
      ],
    })
    const { host, faults, report } = await hosted.check(house('larkspur-lane'), options)
    expect(faults).toEqual([])
    expect(host.map(({ rule, subject, result }) => `${rule} ${subject} ${result}`)).toEqual([
      'shop/open-way B1 holds',
      'shop/burns-gas B1 holds',
      'shop/burns-gas RA1 holds',
      'shop/burns-gas DY1 holds',
      'shop/work VR1 holds',
      'shop/work VR2 holds',
    ])
    expect(report).toEqual(checkInstallation(house('larkspur-lane'), rulebook, options))
  })
})
