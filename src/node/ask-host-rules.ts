import { isMap, type InstallationWritten } from '../model/index.js'
import type { HostOutcome } from '../printing/index.js'
import { CouldNotRun } from './could-not-run.js'
import { loadHostRules, placed } from './load-host-rules.js'
import type { LoadedRulebook } from './load-rulebook.js'

/**
 * Asks a host's own rules of a document that has been read before. Whoever has none never loads json-rules-engine.
 *
 * @throws CouldNotRun
 */
export async function askHostRules(
  file: string,
  document: unknown,
  { rulebook, equipment }: LoadedRulebook,
): Promise<HostOutcome> {
  const loaded = loadHostRules(file)
  const { checkInEngine, UnusableHostContent } = await import('../engine/index.js')
  if (!isWritten(document)) throw new TypeError('a document is read before rules are asked of it')
  try {
    const { host, faults } = await checkInEngine(document, rulebook, { equipment, hostRules: loaded.rules })
    return { host, faults }
  } catch (reason) {
    if (reason instanceof UnusableHostContent) throw new CouldNotRun(placed(reason.problems, loaded))
    throw reason
  }
}

/** Reading has judged the rest before. */
function isWritten(document: unknown): document is InstallationWritten {
  return isMap(document)
}
