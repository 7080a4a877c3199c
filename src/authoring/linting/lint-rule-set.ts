import { isMap, type Problem } from '../../model/index.js'
import type { NamedData, Plugin } from '../../rulebook/index.js'
import { catalogueOf } from '../content.js'
import { ruleIdOf } from '../pack-rules.js'
import { placeProblems, type Positions } from '../positions.js'
import { without } from '../without.js'
import { lintExamples } from './lint-examples.js'
import { lintFileNames, readRetired, readSources } from './lint-files.js'
import { openProblems } from './open-problems.js'

/** Everything that belongs to a rule set, as written. */
export interface RuleSetFiles {
  /** Rule files, `rules/<topic>/<name>.yaml`, every scalar as text. */
  readonly rules: readonly NamedData[]
  readonly sources: NamedData
  readonly overlays?: readonly NamedData[]
  /** What the rules stand on. The first opens the rulebook with the rules given here in place of its own. */
  readonly plugins: readonly Plugin[]
  /** Ids that were given up, a list: they are never used again. */
  readonly retired?: NamedData
  /** Where values stand, by name of file. */
  readonly positions?: Positions
}

/**
 * Finds every mistake of a rule set in one run: all that keeps the rulebook from opening or makes a change pointless, and
 * beside that what examples lack. Each problem names its file and, where positions are given, line and column.
 *
 * @example
 * lintRuleSet({ rules, sources, plugins: [base] }).map(printProblem)
 */
export function lintRuleSet({
  rules,
  sources,
  overlays = [],
  plugins,
  retired,
  positions = new Map(),
}: RuleSetFiles): readonly Problem[] {
  const read = readSources(sources)
  const gone = retired === undefined ? { ids: [], problems: [] } : readRetired(retired)
  const content = contentOf({ rules, sources: read.sources, plugins })
  const found = openProblems(content, overlays)
  const catalogue = catalogueOf(content)
  const examples = rules.flatMap(({ file, data }) =>
    lintExamples(data, catalogue).map((problem) => ({ ...problem, file })),
  )
  const added = overlays.flatMap((overlay) =>
    addedRules(overlay).flatMap(({ rule, pointer }) =>
      lintExamples(rule, catalogue).map((problem) => ({
        ...problem,
        file: overlay.file,
        pointer: `${pointer}${problem.pointer}`,
      })),
    ),
  )
  const all = [
    ...lintFileNames(rules, gone.ids),
    ...read.problems,
    ...gone.problems,
    ...withFiles(withoutEchoes(found, rules), rules),
    ...examples,
    ...added,
  ]
  return inReadingOrder(placeProblems(all, positions))
}

function inReadingOrder(problems: readonly Problem[]): readonly Problem[] {
  const place = ({ file = '', line = 0, column = 0 }: Problem): readonly [string, number, number] => [
    file,
    line,
    column,
  ]
  return problems.toSorted((a, b) => {
    const [[fileA, lineA, columnA], [fileB, lineB, columnB]] = [place(a), place(b)]
    if (fileA !== fileB) return fileA < fileB ? -1 : 1
    return lineA - lineB || columnA - columnB
  })
}

function contentOf({
  rules,
  sources,
  plugins,
}: {
  readonly rules: readonly NamedData[]
  readonly sources: Plugin['sources']
  readonly plugins: readonly Plugin[]
}): readonly Plugin[] {
  const [first, ...others] = plugins
  if (first === undefined) return []
  return [
    { ...first, rules: Object.fromEntries(rules.map(({ file, data }) => [ruleIdOf(file) ?? file, data])), sources },
    ...others,
  ]
}

/** A rule that cannot be read is told once; that overlays do not find it is no mistake of theirs. */
function withoutEchoes(problems: readonly Problem[], rules: readonly NamedData[]): readonly Problem[] {
  const ids = rules.map(({ file }) => ruleIdOf(file))
  return problems.filter((problem) => problem.code !== 'unknown-rule' || !ids.includes(problem.received))
}

/** Problems name a rule by its id; here each is told with its file. */
function withFiles(problems: readonly Problem[], rules: readonly NamedData[]): readonly Problem[] {
  const files = new Map(rules.map(({ file }) => [`rules/${ruleIdOf(file) ?? file}.yaml`, file]))
  return problems.map((problem) => {
    const file = files.get(problem.file ?? '')
    return file === undefined ? problem : { ...problem, file }
  })
}

function addedRules({ data }: NamedData): readonly { readonly rule: unknown; readonly pointer: string }[] {
  const changes: readonly unknown[] = isMap(data) && Array.isArray(data.changes) ? data.changes : []
  return changes.flatMap((change, index) => {
    if (!isMap(change) || !isMap(change.add)) return []
    return [{ rule: without(change.add, 'id'), pointer: `/changes/${index}/add` }]
  })
}
