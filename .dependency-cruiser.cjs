// The order of the rooms: a room may import itself and the rooms before it.
const rooms = [
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
]

// Why each room must not look further along.
const order = {
  units: 'A quantity knows nothing of heating, so every other room can speak in it.',
  tables:
    'Published figures stand alone, so that a figure can be checked against its source without a house around it.',
  model: 'What an installation is does not depend on what anybody asks of it.',
  network: 'Order and reach are read from the drawn lines alone, whatever the rules make of them.',
  sizing: 'Sizing is pure functions over numbers and knows no facts, so each formula can be tested against its source.',
  facts: 'Facts know no rules: a fact means the same whoever asks for it.',
  rulebook: 'A rulebook is opened once and knows no house, no check of ours and no verdict.',
  checks: 'Our own checks keep the contract of any plugin, so they see nothing that a plugin may not see.',
  judging: 'Judging gives verdicts only; how they are worded, ordered and carried comes after.',
  findings: 'A report is plain data, the same whichever engine or printer takes it on.',
  engine: 'The engine carries our rules beside those of a host and never decides how a report looks.',
  printing: 'Printing turns a finished report into text, so an app can print without the tools for authors.',
  authoring: 'The tools for authors work on data in memory, so they run in an editor or a browser as well.',
}

const packages = (...names) => `(^|node_modules/)(${names.join('|')})(/|$)`
const anyOf = (names) => `(${names.join('|')})`
const drawers = anyOf(['utils', 'helpers', 'common', 'core', 'lib', 'types'])

const orderFences = rooms.slice(0, -1).map((room, at) => ({
  name: `order-${room}`,
  comment: order[room],
  from: { path: `^src/${room}/` },
  to: { path: `^src/${anyOf(rooms.slice(at + 1))}/` },
}))

const wayFences = [
  {
    name: 'room-door',
    comment: 'A room is entered through its index.ts, so what is behind the door can change without asking anybody.',
    from: { path: '^src/([^/]+)' },
    to: { path: '^src/[^/]+/', pathNot: ['^src/$1/', '^src/[^/]+/index[.]ts$'] },
  },
  {
    name: 'above-the-chain',
    comment:
      'The files directly under src put the rooms together; only the outermost rooms, authoring and node, use them.',
    from: { path: `^src/${anyOf(rooms.slice(0, -2))}/` },
    to: { path: '^src/[^/]+$' },
  },
  {
    name: 'light-front-door',
    comment:
      'Whoever checks a document in an app loads no rule data, no rule engine, no author tools and nothing of Node.',
    from: { path: '^src/index[.]ts$' },
    to: { path: ['^src/(engine|authoring|node)/', '^src/base[.]'], reachable: true },
  },
  {
    name: 'no-circles',
    comment: 'Modules that need each other, even for a type, can only be understood and changed together.',
    from: { path: '^src/' },
    to: { circular: true },
  },
  {
    name: 'known-rooms',
    comment: 'A folder under src that is not in the list of rooms would stand outside every fence.',
    from: {},
    to: { path: '^src/[^/]+/', pathNot: `^src/${anyOf(rooms)}/` },
  },
  {
    name: 'no-drawers',
    comment: 'A folder named for nothing collects everything: what helps a room lives in that room.',
    from: {},
    to: { path: [`^src/${drawers}/`, `^src/.+/${drawers}/`] },
  },
  {
    name: 'resolvable',
    comment: 'An import that leads nowhere cannot be judged by any other fence.',
    from: { path: '^src/' },
    to: { couldNotResolve: true },
  },
]

const packageFences = [
  {
    name: 'engine-owns-json-rules-engine',
    comment: 'One room knows the rule engine, so the front door does not carry it and it can be replaced.',
    from: { path: '^src/', pathNot: '^src/engine/' },
    to: { path: packages('json-rules-engine') },
  },
  {
    name: 'node-owns-the-machine',
    comment: 'Files, processes and the clock are touched in one room; everything else runs in a browser or worker.',
    from: { path: '^src/', pathNot: '^src/node/' },
    to: { dependencyTypes: ['core'] },
  },
  {
    name: 'node-owns-the-terminal',
    comment: 'Arguments, prompts and colors belong to the command line, and no embedding app should pay for them.',
    from: { path: '^src/', pathNot: '^src/node/' },
    to: { path: packages('commander', 'picocolors', '@clack/prompts') },
  },
  {
    name: 'node-owns-yaml',
    comment: 'Rules are packed before they are published, so no door but ./node carries a YAML parser.',
    from: { path: '^src/', pathNot: '^src/node/' },
    to: { path: packages('yaml') },
  },
]

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [...orderFences, ...wayFences, ...packageFences].map((fence) => ({ ...fence, severity: 'error' })),
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
      mainFields: ['module', 'main', 'types'],
    },
  },
}
