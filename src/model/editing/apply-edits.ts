import type { Model } from '../model.js'
import { pointerOf, type Problem } from '../problem.js'
import { wrongKeys } from './edit-keys.js'
import type { Edit, Edited } from './edit.js'
import { forget } from './forget.js'
import { insert } from './insert.js'
import type { PlainMap } from './plain.js'
import { remove } from './remove.js'
import { setValue } from './set.js'
import { shapeOf } from './shape.js'
import type { Step } from './step.js'

/**
 * Makes some edits, in order, on a document as written. All are made or none: every edit that cannot be made is told, with the
 * nearest right name. The document given is left alone; the one returned shares what no edit touched. Whether the outcome
 * can be read, with its units and choices, is for reading to tell.
 *
 * A pointer of a problem leads into the list of edits (`/edits/0`), or into the document where that has no usable shape.
 *
 * @example
 * const raised = applyEdits(document, [{ set: 'RV1.setPressure', to: '50 psi' }, { forget: 'EX1.precharge' }], model)
 */
export function applyEdits(document: unknown, edits: readonly Edit[], model: Model): Edited {
  const shape = shapeOf(document, model)
  if (!shape.ok) return shape
  const start: Progress = { document: shape.document, problems: [] }
  const end = edits.reduce((sofar, edit, index) => next(sofar, edit, index, model), start)
  return end.problems.length === 0 ? { ok: true, document: end.document } : { ok: false, problems: end.problems }
}

interface Progress {
  readonly document: PlainMap
  readonly problems: readonly Problem[]
}

function next(sofar: Progress, edit: Edit, index: number, model: Model): Progress {
  const step = wrongKeys(edit) ?? applyEdit(sofar.document, edit, model)
  if (step.ok) return { ...sofar, document: step.document }
  return { ...sofar, problems: [...sofar.problems, { ...step.refusal, pointer: pointerOf(['edits', index]) }] }
}

function applyEdit(document: PlainMap, edit: Edit, model: Model): Step {
  if ('set' in edit) return setValue(document, edit, model)
  if ('remove' in edit) return remove(document, edit.remove, model)
  if ('insert' in edit) return insert(document, edit, model)
  return forget(document, edit.forget, model)
}
