import { isMap, type Problem } from '../../model/index.js'
import { tryOpenRulebook, type NamedData, type Plugin } from '../../rulebook/index.js'

/**
 * Warnings of everything that is sound, beside the problems of what is not: a rulebook with a mistake does not open and tells
 * no warnings, so rules without one are opened again, with one change of an overlay at a time.
 */
export function warningsBeside(
  problems: readonly Problem[],
  content: readonly Plugin[],
  overlays: readonly NamedData[],
): readonly Problem[] {
  const [first, ...others] = content
  if (first === undefined) return []
  const faulty = new Set(problems.map((problem) => problem.file))
  const rules = Object.fromEntries(Object.entries(first.rules).filter(([id]) => !faulty.has(`rules/${id}.yaml`)))
  const warningsWith = (laid: readonly NamedData[]): readonly Problem[] => {
    const opened = tryOpenRulebook({ ruleSets: [{ ...first, rules }], plugins: others, overlays: laid })
    return opened.ok ? opened.rulebook.warnings : []
  }
  const ofRules = warningsWith([])
  const ofOverlays = overlays.flatMap((overlay) =>
    changesAlone(overlay).flatMap((alone, index) =>
      warningsWith([alone])
        .filter(({ file }) => file === overlay.file)
        .map((problem) => atChange(problem, index)),
    ),
  )
  return [...ofRules, ...ofOverlays]
}

function changesAlone({ file, data }: NamedData): readonly NamedData[] {
  const changes: readonly unknown[] = isMap(data) && Array.isArray(data.changes) ? data.changes : []
  return isMap(data) ? changes.map((change) => ({ file, data: { ...data, changes: [change] } })) : []
}

function atChange(problem: Problem, index: number): Problem {
  return { ...problem, pointer: problem.pointer.replace(/^\/changes\/0(?=\/|$)/, `/changes/${index}`) }
}
