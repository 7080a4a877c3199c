import { defineCatalogue, type FactHandle } from '../facts/index.js'
import { defineModel, isMap, nearestIn, printProblem, type Problem } from '../model/index.js'
import { digestOf } from './digest.js'
import { layOver, type Overlay } from './overlay.js'
import { prefixed, type Plugin } from './plugin.js'
import { readOverlay } from './read-overlay.js'
import { readRule } from './read-rule.js'
import type { Authority } from './rule.js'
import type { Rulebook } from './rulebook.js'

/** Written data with the name of its file, for problems that name it. */
export interface NamedData {
  readonly file: string
  readonly data: unknown
}

/** What a rulebook is made of. */
export interface RulebookParts {
  /** The first opens the rulebook: its names carry no prefix. */
  readonly ruleSets: readonly Plugin[]
  readonly plugins?: readonly Plugin[]
  /** Overlays as written, or with the name of their file. */
  readonly overlays?: readonly (NamedData | Readonly<Record<string, unknown>>)[]
}

/** An opened rulebook, or every problem that keeps it shut. */
export type RulebookRead =
  { readonly ok: true; readonly rulebook: Rulebook } | { readonly ok: false; readonly problems: readonly Problem[] }

/** A rulebook that cannot open. Holds every mistake found, each with file, place and the nearest right name. */
export class UnusableRulebook extends Error {
  readonly code = 'unusable-rulebook'
  constructor(readonly problems: readonly Problem[]) {
    super(
      `${problems.length} problem${problems.length === 1 ? '' : 's'} in the rulebook:\n${problems.map(printProblem).join('\n')}`,
    )
    this.name = 'UnusableRulebook'
  }
}

/**
 * Compiles rule sets, plugins and overlays into one rulebook that can judge any number of documents.
 *
 * @throws UnusableRulebook
 * @example
 * const rulebook = openRulebook({ ruleSets: [base] })
 */
export function openRulebook(parts: RulebookParts): Rulebook {
  const read = tryOpenRulebook(parts)
  if (!read.ok) throw new UnusableRulebook(read.problems)
  return read.rulebook
}

/** The same without throwing. */
export function tryOpenRulebook({ ruleSets, plugins = [], overlays = [] }: RulebookParts): RulebookRead {
  const [first, ...others] = ruleSets
  const content = [...(first === undefined ? [] : [first]), ...[...others, ...plugins].map(prefixed)]
  const handles = content.flatMap((plugin) => [...plugin.facts, ...plugin.checks])
  const model = defineModel(
    content.flatMap((plugin) => plugin.kinds),
    handles.filter((handle) => handle.answerable).map(({ of, name, type }) => ({ of, name, field: type })),
  )
  const facts = defineCatalogue(model, handles)
  const sources = new Map(content.flatMap((plugin) => Object.entries(plugin.sources)))
  const read = content.flatMap((plugin) =>
    Object.entries(plugin.rules).map(([id, data]) => ({
      id,
      data,
      ...readRule(id, data, { catalogue: facts, sources, authority: authorityOf(plugin), file: `rules/${id}.yaml` }),
    })),
  )
  const rules = read.flatMap(({ rule }) => rule ?? [])
  const byId = new Map(rules.map((rule) => [rule.id, rule]))
  const data = new Map(read.map((one) => [one.id, one.data]))
  const laid = overlays.map((overlay, index) => {
    const named = nameData(overlay, index)
    return { named, ...readOverlay(named.data, { catalogue: facts, sources, rules: byId, data, file: named.file }) }
  })
  const compiled = laid.flatMap(({ overlay }) => overlay ?? [])
  const problems = [
    ...nameProblems(content, handles),
    ...read.flatMap((one) => one.problems),
    ...laid.flatMap((one) => one.problems),
    ...twice(compiled),
  ]
  if (problems.length > 0) return { ok: false, problems }
  const complete = layOver(rules, compiled)
  const made = [
    ...content.map(({ name, version, rules: written, sources: named }) => ({
      name,
      version,
      rules: written,
      sources: named,
    })),
    [...laid].sort((a, b) => ((a.overlay?.id ?? '') < (b.overlay?.id ?? '') ? -1 : 1)).map((one) => one.named.data),
  ]
  return {
    ok: true,
    rulebook: Object.freeze({
      model,
      facts,
      rules: complete,
      rulesById: new Map(complete.map((rule) => [rule.id, rule])),
      sources,
      ruleSets: content.map(({ name, version }) => ({ name, version })),
      overlays: compiled.map((overlay) => overlay.authority),
      warnings: [...read.flatMap((one) => one.warnings), ...laid.flatMap((one) => one.warnings)],
      hash: digestOf(made),
    }),
  }
}

function authorityOf(plugin: Plugin): Authority {
  return Object.freeze({
    id: plugin.name,
    name: plugin.name === 'base' ? 'the base rules' : plugin.name,
    layer: 'base',
    official: false,
  })
}

function nameData(overlay: NamedData | Readonly<Record<string, unknown>>, index: number): NamedData {
  if (isNamed(overlay)) return overlay
  return { file: `overlay ${typeof overlay.overlay === 'string' ? overlay.overlay : index + 1}`, data: overlay }
}

function isNamed(overlay: NamedData | Readonly<Record<string, unknown>>): overlay is NamedData {
  return isMap(overlay) && typeof overlay.file === 'string' && 'data' in overlay
}

/** Names that two pieces of content claim, and facts of kinds that nobody declares. */
function nameProblems(content: readonly Plugin[], handles: readonly FactHandle[]): readonly Problem[] {
  const kinds = content.flatMap((plugin) =>
    plugin.kinds.flatMap((kind) => [
      kind.name,
      ...kind.families.map((family) => family.name),
      ...Object.values(kind.parts).map((part) => part.name),
    ]),
  )
  const lost = handles.filter((handle) => !kinds.includes(handle.of))
  const repeated = [
    ...doubles(content.flatMap((plugin) => Object.keys(plugin.rules))).map((id) => `Two rules have the id "${id}".`),
    ...doubles(content.flatMap((plugin) => plugin.kinds.map((kind) => kind.name))).map(
      (name) => `Two kinds have the name "${name}".`,
    ),
    ...doubles(handles.map((handle) => `${handle.of}.${handle.name}`)).map(
      (name) => `Two facts have the name "${name}".`,
    ),
    ...doubles(content.map((plugin) => plugin.name)).map((name) => `Two rule sets or plugins have the name "${name}".`),
  ]
  return [
    ...repeated.map((message) => ({ code: 'duplicate-id', pointer: '', message })),
    ...lost.map((handle) => ({
      code: 'unknown-kind',
      pointer: '',
      message: `The fact "${handle.name}" is about "${handle.of}", which no kind or family is called.`,
      ...nearestIn(handle.of, kinds),
    })),
  ]
}

function twice(overlays: readonly Overlay[]): readonly Problem[] {
  return doubles(overlays.map((overlay) => overlay.id)).map((id) => ({
    code: 'duplicate-id',
    pointer: '/overlay',
    message: `Two overlays have the name "${id}".`,
  }))
}

function doubles(names: readonly string[]): readonly string[] {
  const seen = new Set<string>()
  return names.filter((name) => {
    if (seen.has(name)) return true
    seen.add(name)
    return false
  })
}
