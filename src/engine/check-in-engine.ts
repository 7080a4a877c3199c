import type { InstallationWritten } from '../model/index.js'
import type { Rulebook } from '../rulebook/index.js'
import type { HostContent } from './host-content.js'
import { RulebookEngine, type EngineCheck, type EngineCheckOptions } from './rulebook-engine.js'

/**
 * Judges a written installation with the rulebook carried on json-rules-engine, beside a host's own rules, facts and
 * listeners. The report is the one that a check without the engine gives. Whoever checks many documents makes one
 * {@link RulebookEngine} and keeps it.
 *
 * @throws UnusableHostContent when a rule of the host's cannot stand beside ours, with every problem
 * @throws UnreadableInstallation when the document cannot be read, with every problem
 * @example
 * ```ts
 * const lowLimit: HostRule = {
 *   name: 'shop/low-limit',
 *   of: 'boiler',
 *   conditions: { all: [{ fact: 'boiler.mawp', operator: 'lessThan', value: 206843 }] },
 *   event: { type: 'low-limit' },
 * }
 * const { report, host, faults } = await checkInEngine(document, rulebook, { hostRules: [lowLimit] })
 * ```
 */
export async function checkInEngine(
  document: InstallationWritten,
  rulebook: Rulebook,
  options: EngineCheckOptions & HostContent = {},
): Promise<EngineCheck> {
  return new RulebookEngine(rulebook, options).check(document, options)
}
