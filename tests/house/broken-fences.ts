/** Files of a small `src` folder: path below `src`, text. */
export type Tree = Readonly<Record<string, string>>

export const rooms = [
  'units',
  'tables',
  'model',
  'network',
  'sizing',
  'facts',
  'rulebook',
  'checks',
  'judging',
  'findings',
  'engine',
  'printing',
  'authoring',
  'node',
] as const

type Room = (typeof rooms)[number]

const ownPackages: Readonly<Partial<Record<Room, readonly string[]>>> = {
  engine: ['json-rules-engine'],
  node: ['node:fs', 'commander', 'picocolors', 'yaml'],
}

/** A tree that keeps every fence: each room imports all before it, and each package is used where it belongs. */
export function keptFences(): Tree {
  const doors: Tree = Object.fromEntries(
    rooms.map((room, at) => [`${room}/index.ts`, doorOf(room, rooms.slice(0, at))]),
  )
  return {
    ...doors,
    'check-installation.ts': "export { units } from './units/index.js'",
    'index.ts': "export { findings } from './findings/index.js'\nexport * from './check-installation.js'",
    'base.ts': "export { rulebook } from './rulebook/index.js'",
    'authoring/page.ts': "import { rulebook } from '../base.js'\nexport const page = rulebook",
    'node/main.ts': "import '../index.js'\nimport '../base.js'\nimport './index.js'",
  }
}

/** For each fence the smallest trees that break it and no other fence. */
export const brokenFences: Readonly<Record<string, readonly Tree[]>> = {
  ...Object.fromEntries(
    rooms.slice(0, -1).map((room, at) => [`order-${room}`, rooms.slice(at + 1).map((later) => lookAhead(room, later))]),
  ),
  'room-door': [
    { 'units/parse.ts': 'export const parse = 1', 'model/index.ts': "import '../units/parse.js'" },
    { 'units/parse.ts': 'export const parse = 1', 'index.ts': "export * from './units/parse.js'" },
    { 'units/print/index.ts': 'export const print = 1', 'model/index.ts': "import '../units/print/index.js'" },
  ],
  'above-the-chain': [
    { 'built-in.ts': 'export const builtIn = 1', 'engine/index.ts': "import '../built-in.js'" },
    {
      'index.ts': 'export type Report = string',
      'units/index.ts': "import type { Report } from '../index.js'\nexport type A = Report",
    },
    { 'base.generated.json': '{}', 'tables/index.ts': "import '../base.generated.json' with { type: 'json' }" },
  ],
  'light-front-door': [
    { 'engine/index.ts': 'export const engine = 1', 'index.ts': "export * from './engine/index.js'" },
    { 'base.ts': 'export const base = 1', 'built-in.ts': "import './base.js'", 'index.ts': "import './built-in.js'" },
  ],
  'no-circles': [
    { 'units/parse.ts': "import './print.js'", 'units/print.ts': "import './parse.js'" },
    {
      'units/parse.ts': "import type { Print } from './print.js'\nexport type Parse = Print",
      'units/print.ts': "import type { Parse } from './parse.js'\nexport type Print = Parse",
    },
  ],
  'known-rooms': [{ 'attic/index.ts': 'export const attic = 1', 'units/index.ts': "import '../attic/index.js'" }],
  'no-drawers': ['utils', 'helpers', 'common', 'core', 'lib', 'types'].map((drawer) => ({
    [`units/${drawer}/round.ts`]: 'export const round = 1',
    'units/index.ts': `import './${drawer}/round.js'`,
  })),
  resolvable: [{ 'units/index.ts': "import './parse.js'" }, { 'units/index.ts': "import 'no-such-package'" }],
  'engine-owns-json-rules-engine': outside('judging', 'json-rules-engine'),
  'node-owns-the-machine': [
    ...outside('authoring', 'node:fs'),
    ...outside('units', 'fs'),
    ...outside('printing', 'node:fs/promises'),
  ],
  'node-owns-the-terminal': [...outside('authoring', 'commander'), ...outside('printing', 'picocolors')],
  'node-owns-yaml': outside('authoring', 'yaml'),
}

function lookAhead(room: Room, later: Room): Tree {
  return {
    [`${later}/index.ts`]: 'export type A = 1',
    [`${room}/index.ts`]: `import type { A } from '../${later}/index.js'\nexport type B = A`,
  }
}

function outside(room: Room, name: string): readonly Tree[] {
  return [{ [`${room}/index.ts`]: `import '${name}'` }, { 'index.ts': `import '${name}'` }]
}

function doorOf(room: Room, earlier: readonly Room[]): string {
  const imports = [...earlier.map((name) => `../${name}/index.js`), ...(ownPackages[room] ?? [])]
  return [...imports.map((name) => `import '${name}'`), `export const ${room} = 1`].join('\n')
}
