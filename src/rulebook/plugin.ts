import { choice, type KindSpec, type FamilySpec, type LeafField } from '../model/index.js'
import { fact, type Answer, type Context, type FactHandle } from '../facts/index.js'
import type { SourceData } from './rule-data.js'

/** Content by the public contract: kinds, facts, checks, rules and their sources. */
export interface Plugin {
  readonly name: string
  readonly version: string
  /** Version of this contract. */
  readonly contract: 1
  readonly kinds: readonly KindSpec[]
  readonly facts: readonly FactHandle[]
  readonly checks: readonly FactHandle[]
  /** Rule data by id, as written: all scalars text. */
  readonly rules: Readonly<Record<string, unknown>>
  readonly sources: Readonly<Record<string, SourceData>>
}

/**
 * Puts content together as a plugin. Names inside get the prefix `name/` when a rulebook opens with it.
 *
 * @example
 * const tankLabels = definePlugin({ name: 'tank-labels', version: '1.0.0', contract: 1 })
 */
export function definePlugin(words: Pick<Plugin, 'name' | 'version' | 'contract'> & Partial<Plugin>): Plugin {
  return Object.freeze({ kinds: [], facts: [], checks: [], rules: {}, sources: {}, ...words })
}

interface CheckWords<A extends string> {
  readonly of: KindSpec | FamilySpec
  /** Answers that the check can give. */
  readonly answers: readonly A[]
  /** The document may state the answer, for who has not drawn anything. */
  readonly answerable?: boolean
  readonly judge: (context: Context) => Answer
}

/**
 * Declares a check: a fact computed by code, whose answer carries the way that was walked. Rules demand its answer.
 *
 * @example
 * const labelReadable = defineCheck('labelReadable', { of: indirectTank, answers: ['yes', 'no'], judge: () => unknown() })
 */
export function defineCheck<A extends string>(name: string, { answers, judge, ...words }: CheckWords<A>): FactHandle {
  return fact(name, {
    ...words,
    type: choice(Object.fromEntries(answers.map((answer) => [answer, answer]))),
    read: judge,
  })
}

/** The plugin with its own names prefixed, in what it declares and in what refers to it. */
export function prefixed(plugin: Plugin): Plugin {
  const own = new Set(plugin.kinds.map((kind) => kind.name))
  const named = (name: string): string => (own.has(name) ? `${plugin.name}/${name}` : name)
  const renameHandle = (handle: FactHandle): FactHandle => ({
    ...handle,
    name: `${plugin.name}/${handle.name}`,
    of: named(handle.of),
    read: (context) => handle.read(contextOf(plugin, context, named)),
  })
  return {
    ...plugin,
    kinds: plugin.kinds.map((kind) => ({
      ...kind,
      name: named(kind.name),
      fields: mapValues(kind.fields, (field) => (field.type === 'group' ? field : renameReference(field, named))),
    })),
    facts: plugin.facts.map(renameHandle),
    checks: plugin.checks.map(renameHandle),
    rules: Object.fromEntries(Object.entries(plugin.rules).map(([id, rule]) => [`${plugin.name}/${id}`, rule])),
  }
}

/** A plugin's code speaks of its own kinds and facts by the names it gave them. */
function contextOf(plugin: Plugin, context: Context, named: (name: string) => string): Context {
  const own = [...plugin.facts, ...plugin.checks]
  const { subject, installation, find, parts } = context
  return {
    subject,
    installation,
    find,
    parts,
    ask: (asked, of) =>
      context.ask(typeof asked !== 'string' && own.includes(asked) ? `${plugin.name}/${asked.name}` : asked, of),
    listed: (kind) => context.listed(named(typeof kind === 'string' ? kind : kind.name)),
    // Read only when asked for: the network is drawn at the first question.
    get network() {
      return context.network
    },
  }
}

function renameReference(field: LeafField, named: (name: string) => string): LeafField {
  if (field.type === 'reference') return { ...field, to: field.to.map(named) }
  if (field.type === 'list' && field.of.type === 'reference')
    return { ...field, of: { ...field.of, to: field.of.to.map(named) } }
  return field
}

function mapValues<A, B>(values: Readonly<Record<string, A>>, change: (value: A) => B): Readonly<Record<string, B>> {
  return Object.fromEntries(Object.entries(values).map(([name, value]) => [name, change(value)]))
}
