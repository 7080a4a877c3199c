import { readdirSync, readFileSync } from 'node:fs'
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'

const compile = (name: string): ValidateFunction =>
  new Ajv2020({ strict: true, strictTypes: false, strictRequired: false, allErrors: true }).compile(
    JSON.parse(readFileSync(`docs/schema/${name}.json`, 'utf8')) as object,
  )
const schemas = {
  installation: compile('installation'),
  equipment: compile('equipment'),
  rule: compile('rule'),
  overlay: compile('overlay'),
}

/** As an editor sees it: YAML scalars typed. */
const read = (file: string): unknown => parse(readFileSync(file, 'utf8')) as unknown
const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => `${folder}/${name}`)

function mistakes(schema: ValidateFunction, data: unknown): readonly string[] {
  return schema(data)
    ? []
    : (schema.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message ?? ''}`)
}

describe.each([
  ['installation', filesIn('seeds')],
  ['equipment', filesIn('shared/equipment')],
  ['rule', filesIn('rules').filter((file) => file !== 'rules/retired.yaml')],
  ['overlay', filesIn('shared/overlays')],
] as const)('the schema of %s files', (name, files) => {
  it.each(files)('lets %s pass', (file) => {
    expect(mistakes(schemas[name], read(file))).toEqual([])
  })

  it('finds a key that nobody knows', () => {
    const file = read(files[0] ?? '') as object
    expect(mistakes(schemas[name], { ...file, reliefs: 'none' }).join()).toContain(
      'must NOT have additional properties',
    )
  })
})

const house = (component: object, more: object = {}): unknown => ({
  installation: 1,
  components: [{ id: 'B1', kind: 'boiler', ...component }],
  ...more,
})

describe('the schema of installations', () => {
  it.each([
    [
      'text and long forms',
      house({ mawp: '50 psi', input: { value: '75000 Btu/h', how: 'nameplate', evidence: ['P1'] } }),
    ],
    ['yes as text and as a truth value', house({ condensing: true, sealedCombustion: 'yes' })],
    ['unknown', house({ mawp: 'unknown', acceptedExhaust: ['pvc-solid', 'unknown'] })],
    [
      'counts, years and sizes as numbers',
      house(
        { installedOn: 2024 },
        {
          complete: { boiler: 1 },
          lines: [{ id: 'L1', medium: 'heatingWater', path: ['B1.supply', 'unknown'], pipe: { size: 2 } }],
        },
      ),
    ],
    ['several alike', { installation: 1, components: [{ id: ['ZV1', 'ZV2'], kind: 'zoneValve' }] }],
    ['answers', house({ reliefWay: 'open', weakestPart: { value: '60 psi', within: '5 psi' } })],
    ['notes of its own', house({ 'x-note': { any: 'thing' } })],
  ])('lets %s pass', (_, document) => {
    expect(mistakes(schemas.installation, document)).toEqual([])
  })

  it.each([
    ['a number without unit', house({ mawp: 50 })],
    ['digits without unit', house({ mawp: '50' })],
    ['a field of another kind', house({ setPressure: '30 psi' })],
    ['a kind that nobody knows', house({ kind: 'biler' })],
    ['a word that is no choice', house({ serves: 'cooling' })],
    ['a long form without value', house({ mawp: { how: 'gauge' } })],
    ['a way of knowing that is none', house({ mawp: { value: '50 psi', how: 'photo' } })],
    ['an amount that stands in without within', house({ weakestPart: '60 psi' })],
    ['an id with a space', house({ id: 'B 1' })],
    ['a line without path', house({}, { lines: [{ id: 'L1', medium: 'heatingWater' }] })],
    ['a version of the future', { installation: 2 }],
  ])('refuses %s', (_, document) => {
    expect(mistakes(schemas.installation, document)).not.toEqual([])
  })

  it('tells what a field means', () => {
    const schema = JSON.parse(readFileSync('docs/schema/installation.json', 'utf8')) as {
      readonly $defs: Readonly<
        Record<string, { readonly properties?: Readonly<Record<string, { readonly description?: string }>> }>
      >
    }
    expect(schema.$defs.boiler?.properties?.mawp?.description).toContain('Maximum allowable working pressure')
  })
})

describe('the schemas of rules and overlays', () => {
  const rule = read('rules/relief/present.yaml') as { readonly demands: readonly object[] }
  const overlay = read('shared/overlays/harrowmere.yaml') as object

  it.each([
    ['an operator that nobody knows', { ...rule, measure: { fact: 'boiler.reliefs', operator: 'atleast' } }],
    [
      'two operators in one comparison',
      { ...rule, when: { 'boiler.input': { atLeast: '1 Btu/h', atMost: '2 Btu/h' } } },
    ],
    ['an empty group', { ...rule, when: { all: [] } }],
    ['a severity that is none', { ...rule, demands: rule.demands.map((demand) => ({ ...demand, severity: 'shall' })) }],
  ])('refuse %s', (_, data) => {
    expect(mistakes(schemas.rule, data)).not.toEqual([])
  })

  it.each([
    ['a misspelt verb', [{ demnad: 'relief/present', severity: 'must', value: 1, nature: 'amendment', clause: '1' }]],
    ['a demand without nature', [{ demand: 'relief/present', severity: 'must', value: 1, clause: '1' }]],
  ])('refuse %s', (_, changes) => {
    expect(mistakes(schemas.overlay, { ...overlay, changes })).not.toEqual([])
  })
})
