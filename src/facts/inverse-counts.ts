import type { Entry, Installation, InverseReference, Thing } from '../model/index.js'
import type { Missing } from './answer.js'

/** How many things refer to each thing, per name that they are counted under. */
export interface InverseCounts {
  /** Ids of those that certainly refer to it. */
  readonly referring: (target: string, countedAs: string) => readonly string[]
  /** Those of a kind that may refer to anything, because their reference is not known. */
  readonly undecided: (kind: string, field: string) => readonly Missing[]
}

/** Walks every reference field once. */
export function countInverse(installation: Installation): InverseCounts {
  const referring = new Map<string, string[]>()
  const undecided = new Map<string, Missing[]>()
  const done = new Set<InverseReference>()
  for (const inverse of [...installation.model.inverse.values()].flat()) {
    if ([...done].some((other) => other.kind === inverse.kind && other.field === inverse.field)) continue
    done.add(inverse)
    for (const thing of installation.ofKind.get(inverse.kind) ?? []) note(thing, inverse, { referring, undecided })
  }
  return {
    referring: (target, countedAs) => referring.get(`${target} ${countedAs}`) ?? [],
    undecided: (kind, field) => undecided.get(`${kind} ${field}`) ?? [],
  }
}

interface Notes {
  readonly referring: Map<string, string[]>
  readonly undecided: Map<string, Missing[]>
}

function note(thing: Thing, { kind, field, countedAs }: InverseReference, { referring, undecided }: Notes): void {
  const entry = thing.entries[field]
  for (const target of targetsOf(entry)) push(referring, `${target} ${countedAs}`, thing.id)
  if (!isComplete(entry)) push(undecided, `${kind} ${field}`, { subject: thing.id, fact: field })
}

function targetsOf(entry: Entry | undefined): readonly string[] {
  if (entry?.value.type === 'word') return [entry.value.word]
  return entry?.value.type === 'list' ? [...new Set(entry.value.members)] : []
}

function isComplete(entry: Entry | undefined): boolean {
  return entry?.value.type === 'list' ? entry.value.complete : entry !== undefined
}

function push<V>(map: Map<string, V[]>, key: string, value: V): void {
  const list = map.get(key)
  if (list === undefined) map.set(key, [value])
  else list.push(value)
}
