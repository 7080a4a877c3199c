import { isMap } from '../reading/index.js'
import { refuse, type Refused, refuseName } from './step.js'

const verbs = ['set', 'remove', 'insert', 'forget'] as const
type Verb = (typeof verbs)[number]

const keysOf: Readonly<Record<Verb, readonly string[]>> = {
  set: ['set', 'to'],
  remove: ['remove'],
  insert: ['insert', 'in', 'after', 'before', 'as', 'section'],
  forget: ['forget'],
}

/** What is wrong with an edit as written, before anything is looked up: it comes from files too, which no compiler has seen. */
export function wrongKeys(edit: unknown): Refused | undefined {
  if (!isMap(edit)) return refuse('unknown-edit', 'An edit is a map with one verb.', { expected: verbs.join(', ') })
  const keys = Object.keys(edit)
  const verb = verbs.find((name) => keys.includes(name))
  if (verb === undefined) return refuseName('unknown-edit', 'An edit names one of its verbs.', keys[0] ?? '', verbs)
  const wrong = keys.find((key) => !keysOf[verb].includes(key))
  if (wrong !== undefined) return refuseName('unknown-key', `"${verb}" takes no "${wrong}".`, wrong, keysOf[verb])
  const nameless = keysOf[verb].find(
    (key) => !freeKeys.includes(key) && edit[key] !== undefined && typeof edit[key] !== 'string',
  )
  return nameless === undefined
    ? undefined
    : refuse('unreadable-name', `"${nameless}" is a name.`, { expected: 'text' })
}

const freeKeys: readonly string[] = ['to', 'insert']
