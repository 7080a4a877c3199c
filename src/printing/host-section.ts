import type { EngineCheck } from '../engine/index.js'
import type { Section } from './sheet.js'
import { counted } from './spoken-words.js'

/** What came of a host's own rules. */
export type HostOutcome = Pick<EngineCheck, 'host' | 'faults'>

/** A host's own rules as a section of the page: where they hold, where it cannot be told, and what went wrong in them. */
export function hostSection({ host, faults }: HostOutcome): Section {
  const told = host.filter(({ result }) => result !== 'does not hold')
  const quiet = host.length - told.length
  const rows = [
    ...told.map(({ rule, subject, event, result }) => ({
      label: result === 'holds' ? 'Holds' : 'Open',
      text: `${subject}: ${event.type} (${rule})`,
    })),
    ...faults.map(({ rule, subject, message }) => ({
      label: 'FAULT',
      text: [rule, subject, message].filter((part) => part !== undefined).join(': '),
      tone: 'must' as const,
    })),
  ]
  return {
    heading: `RULES OF YOUR OWN (${host.length})`,
    tone: 'plain',
    numbered: false,
    note: `They change nothing above. ${counted(quiet, 'does', 'do')} not hold.`,
    items: [{ rows }],
  }
}
