import { base } from '../base.js'
import { readEquipment, type Model, type Problem } from '../model/index.js'
import { tryOpenRulebook, type Plugin, type Rulebook } from '../rulebook/index.js'
import { CouldNotRun } from './could-not-run.js'
import { attempt } from './files.js'
import { findFiles } from './find-files.js'
import { loadPlugins } from './load-plugin.js'
import type { LoadedText } from './load-text.js'
import { withPositions } from './locate.js'
import { parseAll, shown, tellOpened } from './opened-files.js'
import { packageFolder } from './package-folder.js'
import { wantedByDocument } from './wanted-by-document.js'

/** What to open a rulebook with. */
export interface RulebookOptions {
  /** The document whose authorities and equipment are looked for; without it only what is given is opened. */
  readonly document?: LoadedText
  /** Overlay files, and folders to look for named authorities in. */
  readonly overlays?: readonly string[]
  /** Equipment files, and folders to look for named models in. */
  readonly equipment?: readonly string[]
  /** ES modules that export plugins: paths, or names of installed packages. */
  readonly plugins?: readonly string[]
}

/** A rulebook that is open, the makers' data beside it, and which files they came from. */
export interface LoadedRulebook {
  readonly rulebook: Rulebook
  readonly equipment: readonly unknown[]
  /** One line a file, with where it was found. */
  readonly opened: readonly string[]
  /** What was named and not found, and what was given and passed over. */
  readonly notes: readonly string[]
}

/**
 * Opens the base rules with plugins and overlays. What the document names is looked for beside it, then in what is given,
 * then among the package's own examples.
 *
 * @throws CouldNotRun with every problem of every file, each with file, line and column
 * @example
 * const { rulebook } = await loadRulebook({ overlays: ['overlays/saltmarrow.yaml'] })
 */
export async function loadRulebook(options: RulebookOptions = {}): Promise<LoadedRulebook> {
  const { document, overlays = [], equipment = [], plugins = [] } = options
  const loaded = await Promise.all(plugins.map(loadPlugins))
  const examples = attempt(() => packageFolder())
  const found = findFiles(document === undefined ? [] : wantedByDocument(document.value), {
    ...(document === undefined ? {} : { document: document.file }),
    overlays,
    equipment,
    ...(examples === undefined ? {} : { packageFolder: examples }),
  })
  if (found.problems.length > 0)
    throw new CouldNotRun(
      document === undefined ? found.problems : withPositions(found.problems, document.file, document.source),
    )
  const texts = parseAll(found.opened)
  const rulebook = openWith(
    loaded.flat(),
    texts.filter(({ opened }) => opened.kind === 'overlay').map(({ text }) => text),
  )
  const makers = texts.filter(({ opened }) => opened.kind === 'equipment').map(({ text }) => text)
  checkEquipment(makers, rulebook.model)
  return {
    rulebook,
    equipment: makers.map(({ value }) => value),
    opened: found.opened.map(tellOpened),
    notes: [
      ...found.missing.map(
        ({ kind, name }) => `No ${kind === 'overlay' ? 'overlay' : 'equipment file'} "${name}" was found.`,
      ),
      ...found.passedOver.map(
        (path) => `${shown(path)} was not opened: one of the same name stands nearer to the document.`,
      ),
    ],
  }
}

function openWith(plugins: readonly Plugin[], overlays: readonly LoadedText[]): Rulebook {
  const read = tryOpenRulebook({
    ruleSets: [base],
    plugins,
    overlays: overlays.map(({ file, value }) => ({ file, data: value })),
  })
  if (read.ok) return { ...read.rulebook, warnings: located(read.rulebook.warnings, overlays) }
  throw new CouldNotRun(located(read.problems, overlays))
}

/** Problems of overlays name their file; here they get line and column as well. */
function located(problems: readonly Problem[], overlays: readonly LoadedText[]): readonly Problem[] {
  return problems.flatMap((problem) => {
    const overlay = overlays.find(({ file }) => file === problem.file)
    if (overlay === undefined) return [problem]
    const { file, ...rest } = problem
    return withPositions([rest], file ?? '', overlay.source)
  })
}

function checkEquipment(files: readonly LoadedText[], model: Model): void {
  const problems = files.flatMap(({ file, value, source }) => {
    const read = readEquipment(value, model)
    return read.ok ? [] : withPositions(read.problems, file, source)
  })
  if (problems.length > 0) throw new CouldNotRun(problems)
}
