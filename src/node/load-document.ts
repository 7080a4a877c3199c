import type { CheckOptions } from '../check-installation.js'
import { gatherFacts } from '../facts/index.js'
import { writeReport, type Judgement, type Report, type ReportOptions } from '../findings/index.js'
import { judge } from '../judging/index.js'
import { isMap, readInstallation, readShelf, UnreadableInstallation, type Phase } from '../model/index.js'
import type { Rulebook } from '../rulebook/index.js'
import { CouldNotRun } from './could-not-run.js'
import { loadText, type LoadedText } from './load-text.js'
import { withPositions } from './locate.js'

/**
 * Reads the file of an installation, YAML or JSON, as plain data that knows where everything stands.
 *
 * @throws CouldNotRun with every problem of the notation, each with file, line and column
 * @example
 * const { value } = loadDocument('house.yaml')
 */
export function loadDocument(file: string): LoadedText {
  return loadText(file)
}

/** What a check of a loaded document may be told. */
export interface PrepareOptions extends Pick<CheckOptions, 'equipment'> {
  /** In place of the phase that the document states. */
  readonly phase?: Phase
}

/**
 * Everything of a check before judging.
 *
 * @throws CouldNotRun with every problem of the document, each with file, line and column
 */
export function prepareDocument(
  document: LoadedText,
  rulebook: Rulebook,
  { phase, equipment = [] }: PrepareOptions = {},
): Omit<Judgement, 'verdicts'> {
  return positioned(document, () => {
    const installation = readInstallation(
      inPhase(document.value, phase),
      rulebook.model,
      readShelf(equipment, rulebook.model),
    )
    return { facts: gatherFacts(installation, rulebook.facts), rulebook, document: document.value }
  })
}

/**
 * The report on a loaded document.
 *
 * @throws CouldNotRun with every problem of the document, each with file, line and column
 */
export function reportOn(
  document: LoadedText,
  rulebook: Rulebook,
  options: PrepareOptions & ReportOptions = {},
): Report {
  const prepared = prepareDocument(document, rulebook, options)
  return positioned(document, () => writeReport({ ...prepared, verdicts: judge(rulebook, prepared.facts) }, options))
}

function positioned<T>({ file, source }: LoadedText, run: () => T): T {
  try {
    return run()
  } catch (reason) {
    if (reason instanceof UnreadableInstallation) throw new CouldNotRun(withPositions(reason.problems, file, source))
    throw reason
  }
}

/** The document as it would be with another phase. */
export function inPhase(value: unknown, phase: Phase | undefined): unknown {
  return phase === undefined || !isMap(value) ? value : { ...value, phase }
}
