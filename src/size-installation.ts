import type { CheckOptions } from './check-installation.js'
import { sizesOf, sizeTopics, type Sizes, type SizeTopic } from './checks/index.js'
import { contextIn, gatherFacts, type Facts } from './facts/index.js'
import { advisory } from './findings/index.js'
import {
  installation as installationKind,
  readInstallation,
  readShelf,
  type InstallationWritten,
} from './model/index.js'
import type { Rulebook } from './rulebook/index.js'

/** What a sizing may be told beside the document. */
export interface SizeOptions extends Pick<CheckOptions, 'equipment'> {
  /** Topics wanted; all when left out. */
  readonly only?: readonly SizeTopic[]
}

/**
 * Works out every number that a written installation has the inputs for, each with its working. What lacks an input names it;
 * what cannot be says why; the rest is still there. Assumed values are used, and the line says so.
 *
 * @throws UnreadableInstallation when the document or an equipment file cannot be read, with every problem
 * @example
 * const sizes = sizeInstallation({ installation: 1 }, openRulebook({ ruleSets: [base] }), { only: ['expansion'] })
 * sizes.topics[0].lines[0].state // 'open'
 */
export function sizeInstallation(document: InstallationWritten, rulebook: Rulebook, options: SizeOptions = {}): Sizes {
  const equipment = readShelf(options.equipment ?? [], rulebook.model)
  const installation = readInstallation(document, rulebook.model, equipment)
  return sizesFrom(gatherFacts(installation, rulebook.facts), options)
}

/** The same, from facts that are gathered already. */
export function sizesFrom(facts: Facts, { only = sizeTopics }: Pick<SizeOptions, 'only'> = {}): Sizes {
  const { installation, catalogue, whole } = facts
  const house = installation.things.get(installationKind.name)
  if (house === undefined) throw new Error('an installation is read without itself')
  const context = contextIn(catalogue, whole, house)
  return {
    advisory,
    ...(installation.name === undefined ? {} : { name: installation.name }),
    units: installation.units,
    topics: sizeTopics
      .filter((topic) => only.includes(topic))
      .map((topic) => ({ topic, lines: sizesOf(topic, context) })),
  }
}
