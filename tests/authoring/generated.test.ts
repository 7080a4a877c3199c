import { existsSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { builtInMeanings, meaningOf, packRules } from '../../src/authoring/index.js'
import { differencesOf } from '../../src/node/generate-differences.js'
import { generateFiles } from '../../src/node/generate-files.js'
import { foundation, rulebookOf, written, writtenRules } from '../rules/base-rules.js'

const root = process.cwd()
const generated = generateFiles(root)
const files = generated.ok ? generated.files : new Map<string, string>()
const { model, facts } = rulebookOf(writtenRules)

describe('generated files', () => {
  it('are what stands on disk; otherwise run "npm run generate"', () => {
    expect(generated.ok ? differencesOf(root, files).map(({ path }) => path) : generated.problems).toEqual([])
  })

  it('are the same bytes each time', () => {
    expect(generateFiles(root)).toEqual(generated)
  })

  it('lead nowhere that is not there', () => {
    const links = [...files]
      .filter(([path]) => path.endsWith('.md'))
      .flatMap(([path, text]) =>
        [...text.matchAll(/\]\(([^)#]+)\)/g)].map(
          (match) => new URL(match[1] ?? '', `file://${root}/${path}`).pathname,
        ),
      )
    expect(links.length).toBeGreaterThan(40)
    expect(links.filter((path) => !existsSync(path))).toEqual([])
  })

  it('differ as soon as one of them is changed, missing or left over', () => {
    const changed = new Map(
      [...files]
        .filter(([path]) => path !== 'docs/schema/rule.json')
        .map(([path, text]) => [path, path === 'docs/rules/index.md' ? `${text} ` : text]),
    )
    expect(
      differencesOf(root, changed.set('docs/rules/new.md', '')).map(({ path, text }) => [path, text === undefined]),
    ).toEqual([
      ['docs/rules/index.md', false],
      ['docs/rules/new.md', false],
      ['docs/schema/rule.json', true],
    ])
  })
})

describe('packed rules', () => {
  it('are sorted by id and leave examples behind', () => {
    const packed = packRules({ version: '1.2.3', rules: written.rules.toReversed(), sources: foundation.sources })
    expect(Object.keys(packed.rules)).toEqual(writtenRules.map(({ id }) => id).toSorted())
    expect(JSON.stringify(packed.rules)).not.toMatch(/"(examples|given)":/)
    expect(packed.version).toBe('1.2.3')
  })
})

describe('meanings', () => {
  const kinds = [...model.kinds.keys()]
  const every = kinds.flatMap((kind) =>
    [...(model.leaves.get(kind)?.keys() ?? []), ...(model.answers.get(kind)?.keys() ?? [])].map((fact) => ({
      kind,
      fact,
    })),
  )
  const derived = facts.handles.map(({ of, name }) => ({ kind: of, fact: name }))
  const counted = kinds.flatMap((kind) =>
    [
      ...Object.keys(model.kinds.get(kind)?.parts ?? {}),
      ...(model.inverse.get(kind) ?? []).map((one) => one.countedAs),
    ].map((fact) => ({ kind, fact })),
  )

  it('are there for every kind and every fact', () => {
    const all = [...kinds.map((kind) => ({ kind, fact: '' })), ...every, ...derived, ...counted]
    expect(all.length).toBeGreaterThan(300)
    expect(all.filter(({ kind, fact }) => meaningOf(model, kind, fact) === undefined)).toEqual([])
  })

  it('speak of nothing that is not there', () => {
    const known = new Set([...every, ...derived].map(({ kind, fact }) => `${kind}.${fact}`))
    const groups = new Set([...every].map(({ kind, fact }) => `${kind}.${fact.split('.')[0] ?? ''}`))
    const own = Object.entries(builtInMeanings)
      .filter(([kind]) => model.kinds.has(kind))
      .flatMap(([kind, told]) =>
        Object.keys(told)
          .filter((fact) => fact !== '')
          .map((fact) => `${kind}.${fact}`),
      )
    expect(own.filter((name) => !known.has(name) && !groups.has(name) && name !== 'state.name')).toEqual([])
  })

  it('are found for families and for what all components share', () => {
    expect(meaningOf(model, 'boiler', 'input')).toBe(builtInMeanings.fuelBurner?.input)
    expect(meaningOf(model, 'boiler', 'installedOn')).toBe('Date it was put in.')
    expect(meaningOf(model, 'space', 'coAlarms')).toContain('carbon monoxide alarm')
    expect(meaningOf(model, 'boiler', 'toString')).toBeUndefined()
  })
})
