import { afterEach, describe, expect, it, vi } from 'vitest'
import { filesIn, run } from './run.js'

const minimal = 'seeds/minimal.yaml'

afterEach(() => {
  vi.unstubAllEnvs()
})

describe('a document that cannot be read', () => {
  it.each([
    ['tab.yaml', 'installation: 1\nsite:\n\taltitude: 3 ft\n', /tab\.yaml:3:1 /],
    ['twice.yaml', 'installation: 1\nname: A\nname: B\n', /twice\.yaml:3:1 .*written twice/],
    ['proto.yaml', 'installation: 1\n__proto__: { x: 1 }\n', /proto\.yaml:2:1 /],
    ['bomb.yaml', `installation: 1\na: &a [x]\nb: [*a, *a]\n`, /bomb\.yaml:2:4 /],
    ['deep.yaml', `installation: 1\nx: ${'['.repeat(5000)}${']'.repeat(5000)}\n`, /deep\.yaml:2:\d+ /],
    [
      'key.yaml',
      'installation: 1\ncomponents:\n  - { id: RV1, kind: reliefValve, setPresure: 30 psi }\n',
      /key\.yaml:3:\d+ .*setPressure/,
    ],
    [
      'kind.yaml',
      'installation: 1\ncomponents:\n  - { id: RV1, kind: reliefvalv }\n',
      /kind\.yaml:3:\d+ .*Did you mean "reliefValve"/,
    ],
    [
      'unit.yaml',
      'installation: 1\ncomponents:\n  - { id: RV1, kind: reliefValve, setPressure: 30 }\n',
      /unit\.yaml:3:\d+ /,
    ],
    [
      'name.yaml',
      'installation: 1\njurisdiction: { authorities: [../../etc/passwd] }\n',
      /name\.yaml:2:\d+ .*no name of an authority/,
    ],
    ['list.yaml', '- 1\n', /list\.yaml:1:1 /],
    ['empty.yaml', '', /empty\.yaml:1:1 /],
  ])('%s ends with 2 and the place of the mistake', async (name, text, expected) => {
    const { code, out, err } = await run(['check', filesIn({ [name]: text })(name), '--exit-on', 'never'])
    expect(code).toBe(2)
    expect(out).toBe('')
    expect(err).toMatch(expected)
    expect(err).toContain('nothing was judged')
  })

  it('tells every problem at once', async () => {
    const at = filesIn({ 'two.yaml': 'installation: 1\nnmae: A\nsite: { altitude: 3 }\n' })
    const { err } = await run(['ask', at('two.yaml')])
    expect(err).toMatch(/two\.yaml:2:1 .*Did you mean "name"/)
    expect(err).toMatch(/two\.yaml:3:\d+ /)
    expect(err).toContain('2 problems')
  })

  it('names the nearest file when there is none of the name', async () => {
    const { code, err } = await run(['check', 'seeds/minimal.yml'])
    expect(code).toBe(2)
    expect(err).toContain('Did you mean "seeds/minimal.yaml"?')
  })

  it.each(['seeds', 'no/such/folder/house.yaml'])('refuses %s', async (file) => {
    expect((await run(['check', file])).code).toBe(2)
  })
})

describe('files beside the document that cannot be used', () => {
  it('are told with line and column, overlays against the rules they speak of', async () => {
    const at = filesIn({
      'town.yaml':
        'overlay: town\nauthority: { name: Town, layer: town }\nwritten: { by: me, official: false }\nbasis: { source: irc, ground: code, known: read }\nchanges:\n  - { demand: vent/termination-hight, severity: must, value: 30 in, nature: amendment, clause: 1 }\n',
    })
    const { code, err } = await run(['check', minimal, '--overlay', at('town.yaml')])
    expect(code).toBe(2)
    expect(err).toMatch(/town\.yaml:6:\d+ .*Did you mean "vent\/termination-height"/)
  })

  it('are told with line and column, equipment against its kind', async () => {
    const at = filesIn({ 'b.yaml': 'equipment: equipment/b\nkind: boiler\nmanual: { title: M }\nmwap: 30 psi\n' })
    const { code, err } = await run(['check', minimal, '--equipment', at('b.yaml')])
    expect(code).toBe(2)
    expect(err).toMatch(/b\.yaml:4:1 .*Did you mean "mawp"/)
  })

  it('are told together', async () => {
    const at = filesIn({ 'a.yaml': 'a: b: c\n', 'b.yaml': 'a: &x 1\n' })
    const { err } = await run(['check', minimal, '--overlay', at('a.yaml'), at('b.yaml')])
    expect(err).toMatch(/a\.yaml:1:/)
    expect(err).toMatch(/b\.yaml:1:/)
  })

  it.each([
    ['nothing.mjs', 'export const nothing = 1\n', 'exports no plugin'],
    ['later.mjs', "export const later = { name: 'later', contract: 2 }\n", 'only one of contract 2'],
    ['broken.mjs', 'export const broken =\n', 'cannot be loaded'],
  ])('modules: %s', async (name, text, expected) => {
    const { code, err } = await run(['check', minimal, '--plugin', filesIn({ [name]: text })(name)])
    expect(code).toBe(2)
    expect(err).toContain(expected)
  })

  it.each([
    ['--plugin', 'no-such-package'],
    ['--overlay', 'no/such'],
    ['--equipment', 'no/such'],
    ['--host-rules', 'no/such'],
  ])('are missing: %s %s', async (option, value) => {
    expect((await run(['check', minimal, option, value])).code).toBe(2)
  })

  it.each([
    [
      '[{ "name": "a", "of": "boiler",\n  "conditions": { "all": [{ "fact": "boiler.mwap", "operator": "lessThan", "value": 1 }] }, "event": { "type": "t" } }]',
      /own\.json:2:\d+ .*Did you mean "boiler\.mawp"/,
    ],
    ['[\n {}]', /own\.json:2:2 /],
    ['{}', /own\.json:1:1 .*list of rules/],
    ['name: shop', /written in JSON/],
  ])('rules of the host: %s', async (text, expected) => {
    const { code, err } = await run(['check', minimal, '--host-rules', filesIn({ 'own.json': text })('own.json')])
    expect(code).toBe(2)
    expect(err).toMatch(expected)
  })
})

describe('options and commands that are not there', () => {
  it.each([
    [['chek', minimal], 'Did you mean check?'],
    [['check', minimal, '--fromat', 'json'], 'Did you mean --format?'],
    [['check', minimal, '--format', 'jsn'], 'Did you mean "json"?'],
    [['check', minimal, '--exit-on', 'fail'], 'It is one of never, failing, open.'],
    [['check', minimal, '--phase', 'finl'], 'Did you mean "final"?'],
    [['check', minimal, '--judged-on', '2025-02-30'], 'is not in the calendar'],
    [['check', minimal, '--judged-on', '2025'], 'It is one day'],
    [['check'], "missing required argument 'file'"],
    [['rules', '--topic', 'releif'], 'Did you mean "relief"?'],
    [['explain', 'relief/wya'], 'Did you mean "relief/way"?'],
    [['explain', 'relief/way', 'seeds/larkspur-lane.yaml', 'B2'], 'Did you mean "B1"?'],
    [['explain', 'relief/way', 'seeds/larkspur-lane.yaml', 'RV1'], 'it is asked of B1'],
    [[], 'Usage: hydronic-rulebook'],
  ])('%j', async (argv, expected) => {
    const { code, out, err } = await run(argv)
    expect(code).toBe(2)
    expect(out).toBe('')
    expect(err).toContain(expected)
  })
})

describe('an error that nobody expected', () => {
  const out = (): never => {
    throw new Error('the paper\nis out')
  }

  it('is one line', async () => {
    vi.stubEnv('DEBUG', '')
    const { code, err } = await run(['rules'], { out })
    expect(code).toBe(2)
    expect(err).toBe('Unexpected error: the paper is out; DEBUG=1 shows more.\n')
  })

  it('shows where it came from when asked', async () => {
    vi.stubEnv('DEBUG', '1')
    expect((await run(['rules'], { out })).err).toContain('could-not-run.test.ts')
  })
})
