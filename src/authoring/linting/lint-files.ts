import { isMap, problemList, type Problem } from '../../model/index.js'
import { checkShape, sourceShape, type NamedData, type SourceData } from '../../rulebook/index.js'
import { ruleIdOf } from '../pack-rules.js'

/** What is wrong with the names of rule files: a place that gives no id, an id given twice or retired. */
export function lintFileNames(rules: readonly NamedData[], retired: readonly string[]): readonly Problem[] {
  const first = new Map<string, string>()
  return rules.flatMap(({ file }): readonly Problem[] => {
    const id = ruleIdOf(file)
    if (id === undefined)
      return [
        {
          code: 'bad-place',
          pointer: '',
          file,
          message: 'A rule lies in rules/<topic>/<name>.yaml, both of small letters, digits and "-".',
        },
      ]
    const other = first.get(id)
    if (other === undefined) first.set(id, file)
    return [
      ...(other === undefined
        ? []
        : [{ code: 'duplicate-id', pointer: '', file, message: `The rule "${id}" stands in ${other} already.` }]),
      ...(retired.includes(id)
        ? [
            {
              code: 'retired-id',
              pointer: '',
              file,
              message: `The id "${id}" was given up and is never used again; find another name.`,
            },
          ]
        : []),
    ]
  })
}

/** The bibliography as read, with its problems. */
export interface SourcesRead {
  readonly sources: Readonly<Record<string, SourceData>>
  readonly problems: readonly Problem[]
}

/** Reads the bibliography. Entries that are sound are kept beside those that are not. */
export function readSources({ file, data }: NamedData): SourcesRead {
  const problems = problemList()
  if (!isMap(data)) problems.add('not-a-map', [], 'Sources are written as names with title and family.')
  const entries = Object.entries(isMap(data) ? data : {}).flatMap(([name, raw]) => {
    const source = checkShape<SourceData>(sourceShape, raw, [name], problems)
    return source === undefined ? [] : [[name, source] as const]
  })
  return { sources: Object.fromEntries(entries), problems: problems.found.map((problem) => ({ ...problem, file })) }
}

/** Reads the list of ids that were given up. */
export function readRetired({ file, data }: NamedData): {
  readonly ids: readonly string[]
  readonly problems: readonly Problem[]
} {
  const ids = Array.isArray(data) ? data.filter((id): id is string => typeof id === 'string') : []
  if (Array.isArray(data) && ids.length === data.length) return { ids, problems: [] }
  return { ids, problems: [{ code: 'not-a-list', pointer: '', file, message: 'Retired ids are a list of rule ids.' }] }
}
