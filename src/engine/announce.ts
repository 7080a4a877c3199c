import type { Almanac, Engine, Event, RuleResult } from 'json-rules-engine'
import { wordsOf, type HostFault } from './faults.js'
import { contentOf, type Listener } from './undeclared.js'

/** Something that a run tells: a verdict of ours, or what a rule of the host's comes to. */
export interface EngineEvent {
  /** `verdict`, or the type that the host's rule gives. */
  readonly type: string
  readonly rule: string
  readonly subject: string
  /** False for what fails and for what cannot be told. */
  readonly holds: boolean
  readonly params: Readonly<Record<string, unknown>>
}

export interface Announcement {
  readonly rule: string
  readonly subject: string
  readonly holds: boolean
  readonly event: Event
  readonly result: RuleResult
  readonly almanac: Almanac
}

export interface Hearing {
  readonly onEvent: ((event: EngineEvent) => unknown) | undefined
  readonly fault: (fault: HostFault) => void
  /** The handler that the host's rule brings for this outcome. */
  readonly own?: Listener | undefined
}

/** Whether anybody listens to verdicts at all. */
export function isHeard(engine: Engine, onEvent: Hearing['onEvent']): boolean {
  const content = contentOf(engine)
  const types = ['success', 'failure', 'verdict']
  return (
    onEvent !== undefined ||
    content.listenersAny().length > 0 ||
    types.some((type) => content.listeners(type).length > 0)
  )
}

/**
 * Tells every listener as json-rules-engine does: `success` or `failure` with the event, and on success the event's own
 * type with its parameters. One that throws keeps nothing from the next, and an event called `error` is like any other.
 */
export async function announce(engine: Engine, told: Announcement, { onEvent, fault, own }: Hearing): Promise<void> {
  const { rule, subject, holds, event, almanac, result } = told
  const outcome = holds ? 'success' : 'failure'
  const plain: EngineEvent = { type: event.type, rule, subject, holds, params: { ...event.params } }
  const heard: readonly Heard[] = [
    ...(onEvent === undefined ? [] : [{ listener: () => onEvent(plain), words: [] }]),
    ...(own === undefined ? [] : [{ listener: own, words: [event, almanac, result] }]),
    ...listenersTo(engine, outcome, [event, almanac, result]),
    ...(holds ? listenersTo(engine, event.type, [event.params, almanac, result]) : []),
  ]
  for (const { listener, words } of heard) {
    try {
      await Reflect.apply(listener, engine, words)
    } catch (reason) {
      fault({ at: 'listener', rule, subject, event: event.type, message: wordsOf(reason) })
    }
  }
}

interface Heard {
  readonly listener: Listener
  readonly words: readonly unknown[]
}

function listenersTo(engine: Engine, type: string, words: readonly unknown[]): readonly Heard[] {
  const content = contentOf(engine)
  const any = content.listenersAny().map((listener) => ({ listener, words: [type, ...words] }))
  return [...any, ...content.listeners(type).map((listener) => ({ listener, words }))]
}
