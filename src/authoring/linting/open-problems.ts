import { isMap, type Problem } from '../../model/index.js'
import { tryOpenRulebook, type NamedData, type Plugin } from '../../rulebook/index.js'
import { warningsBeside } from './warnings-beside.js'

/**
 * Everything that opening a rulebook tells, warnings included. A key that nobody knows keeps the rest of its rule from being
 * read, so the rest is read once more without it: one slip of the pen does not hide the next.
 */
export function openProblems(content: readonly Plugin[], overlays: readonly NamedData[]): readonly Problem[] {
  const told = problemsOf(content, overlays)
  const stray = told.filter((problem) => problem.code === 'unknown-key')
  if (stray.length === 0) return told
  const again = problemsOf(
    content.map((plugin) => ({ ...plugin, rules: withoutKeys(plugin.rules, stray) })),
    overlays.map(({ file, data }) => ({ file, data: pruned(data, pointersIn(file, stray)) })),
  )
  return unique([...told, ...again])
}

function problemsOf(content: readonly Plugin[], overlays: readonly NamedData[]): readonly Problem[] {
  const [first, ...others] = content
  if (first === undefined) return []
  const opened = tryOpenRulebook({ ruleSets: [first], plugins: others, overlays })
  return opened.ok
    ? opened.rulebook.warnings
    : [...opened.problems, ...warningsBeside(opened.problems, content, overlays)]
}

function withoutKeys(rules: Plugin['rules'], stray: readonly Problem[]): Plugin['rules'] {
  return Object.fromEntries(
    Object.entries(rules).map(([id, data]) => [id, pruned(data, pointersIn(`rules/${id}.yaml`, stray))]),
  )
}

function pointersIn(file: string, problems: readonly Problem[]): ReadonlySet<string> {
  return new Set(problems.filter((problem) => problem.file === file).map((problem) => problem.pointer))
}

function pruned(value: unknown, gone: ReadonlySet<string>, pointer = ''): unknown {
  if (gone.size === 0) return value
  if (Array.isArray(value)) return value.map((one: unknown, index) => pruned(one, gone, `${pointer}/${index}`))
  if (!isMap(value)) return value
  const kept = Object.entries(value)
    .map(([key, inner]) => ({ key, inner, at: `${pointer}/${key.replaceAll('~', '~0').replaceAll('/', '~1')}` }))
    .filter(({ at }) => !gone.has(at))
  return Object.fromEntries(kept.map(({ key, inner, at }) => [key, pruned(inner, gone, at)]))
}

function unique(problems: readonly Problem[]): readonly Problem[] {
  return [...new Map(problems.map((problem) => [JSON.stringify(problem), problem])).values()]
}
